// SPDX-License-Identifier: MIT
// The sheet of one walk: all it says in words, the page as a PDF, and the same as text to hand on.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property string subject
    required property SheetViewModel model
    property bool sendingFailed: false

    function handOver(scheme: string): void {
        root.sendingFailed = !Qt.openUrlExternally(root.model.address(scheme));
    }

    title: root.model.title
    subtitle: root.model.programmeLine

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "written"
        visible: root.model.written.length > 0
        kind: "kept"
        text: root.model.written
        Layout.fillWidth: true
    }

    VerdictPanel {
        objectName: "verdict"
        visible: root.model.isFound
        verdict: root.model.verdictKey
        title: root.model.verdict
        mean: root.model.mean
        range: root.model.range
        next: root.model.next
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "folder"
        visible: root.model.isFound
        label: qsTr("Folder for the PDF")
        hint: qsTr("One page, called %1.").arg(root.model.fileName)
        text: root.model.folder
        maximumLength: 1000
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        Layout.fillWidth: true
        onEdited: text => root.model.folder = text
    }

    SectionLabel {
        visible: root.model.isFound
        text: qsTr("As text")
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "copy"
        visible: root.model.isFound
        text: root.model.isCopied ? qsTr("Copied") : qsTr("Copy as text")
        Layout.fillWidth: true
        onClicked: root.model.copy()
    }

    GridLayout {
        visible: root.model.isFound
        columns: Theme.textScale > 1.3 ? 1 : 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        PlainButton {
            objectName: "mail"
            Layout.preferredWidth: 1
            text: qsTr("E-mail")
            Layout.fillWidth: true
            onClicked: root.handOver("mailto")
        }

        PlainButton {
            objectName: "message"
            Layout.preferredWidth: 1
            text: qsTr("Message")
            Layout.fillWidth: true
            onClicked: root.handOver("sms")
        }
    }

    NoticeBar {
        objectName: "nobodyTakesIt"
        visible: root.sendingFailed
        kind: "caution"
        text: qsTr("Nothing on this device takes it. Copy the text instead, and paste it where you write.")
        Layout.fillWidth: true
    }

    Card {
        visible: root.model.isFound
        Layout.fillWidth: true

        Each {
            model: root.model.facts

            FactRow {
                required property int index
                required property string title
                required property string detail
                objectName: "fact" + index
                label: title
                value: detail
                Layout.fillWidth: true
            }
        }
    }

    Each {
        model: root.model.blocks

        ColumnLayout {
            id: block
            required property int index
            required property string title
            required property list<string> flags
            Layout.fillWidth: true

            SectionLabel {
                text: block.title
                Layout.fillWidth: true
            }

            Card {
                Layout.fillWidth: true

                Words {
                    objectName: "block" + block.index
                    text: block.flags.join("\n")
                    kind: "small"
                    Layout.fillWidth: true
                }
            }
        }
    }

    pinned: [
        ActButton {
            objectName: "write"
            visible: root.model.isFound
            text: qsTr("Write the PDF")
            Layout.fillWidth: true
            onClicked: root.model.write()
        }
    ]
}
