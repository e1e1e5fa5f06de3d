// SPDX-License-Identifier: MIT
// Above those who kept traps: what to order for the next season, and the sheets of all.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property WinterViewModel winter
    readonly property bool hasTraps: root.winter.orders.count > 0

    spacing: Theme.gap

    NoticeBar {
        objectName: "trouble"
        visible: root.winter.trouble.length > 0
        kind: "caution"
        text: root.winter.trouble
        Layout.fillWidth: true
    }

    EmptyState {
        objectName: "nothing"
        visible: root.winter.isRead && !root.hasTraps
        title: qsTr("No traps yet")
        text: qsTr("When a season has been, this page says whom to thank and what to order.")
        Layout.fillWidth: true
    }

    SectionLabel {
        visible: root.hasTraps
        text: qsTr("What to order for %1").arg(root.winter.nextYear)
        Layout.fillWidth: true
    }

    Each {
        model: root.winter.orders

        Card {
            id: order
            required property int index
            required property string title
            required property list<string> flags
            objectName: "order" + order.index
            Layout.fillWidth: true

            Words {
                objectName: "pest"
                text: order.title
                kind: "strong"
                Layout.fillWidth: true
            }

            Words {
                objectName: "lines"
                text: order.flags.join("\n")
                Layout.fillWidth: true
            }
        }
    }

    Words {
        objectName: "orderBasis"
        visible: root.hasTraps
        text: qsTr("As many traps as this season, without those of people who do not go on. What you still have in store is not taken off. How long a lure or strip really lasts stands on its label, which goes before this list.")
        kind: "small"
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "copyOrder"
        visible: root.hasTraps
        text: root.winter.copied === "order" ? qsTr("Copied") : qsTr("Copy the list")
        Layout.fillWidth: true
        onClicked: root.winter.copyOrder()
    }

    SectionLabel {
        visible: root.winter.cooperators.count > 0
        text: qsTr("Thank-you sheets")
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "folder"
        visible: root.winter.cooperators.count > 0
        label: qsTr("Folder for the sheets")
        hint: qsTr("A PDF for each who kept traps.")
        text: root.winter.folder
        maximumLength: 1000
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        Layout.fillWidth: true
        onEdited: text => root.winter.folder = text
    }

    ActButton {
        objectName: "writeSheets"
        visible: root.winter.cooperators.count > 0
        enabled: !root.winter.isWriting
        text: qsTr("Write the sheets")
        Layout.fillWidth: true
        onClicked: root.winter.writeSheets()
    }

    NoticeBar {
        objectName: "written"
        visible: root.winter.written.length > 0
        kind: "kept"
        text: root.winter.written
        Layout.fillWidth: true
    }

    SectionLabel {
        visible: root.winter.cooperators.count > 0
        text: qsTr("Who kept traps")
        Layout.fillWidth: true
    }

    Words {
        objectName: "goingOn"
        visible: root.winter.cooperators.count > 0
        text: root.winter.goingOn
        Layout.fillWidth: true
    }
}
