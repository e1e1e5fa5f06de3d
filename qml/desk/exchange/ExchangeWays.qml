// SPDX-License-Identifier: MIT
// The ways by which this device exchanges, and the adding of one.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property ExchangeViewModel model
    property string adding: "" // folder or hub
    property string folder: ""
    property string hub: ""
    property string founding: ""

    function done(isAdded: bool): void {
        if (!isAdded)
            return;
        root.adding = "";
        root.folder = "";
        root.hub = "";
        root.founding = "";
    }

    spacing: Theme.gap

    SectionLabel {
        text: qsTr("Ways")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.ways

        Card {
            id: way

            required property int index
            required property string key
            required property string title
            required property string besides
            required property string detail
            required property string subject
            required property list<string> flags
            objectName: "way" + way.index
            Layout.fillWidth: true

            Words {
                text: way.title
                kind: "strong"
                Layout.fillWidth: true
            }

            Words {
                text: way.subject
                kind: "soft"
                wrapMode: Text.WrapAnywhere
                Layout.fillWidth: true
            }

            Words {
                objectName: "wayDetail"
                text: way.besides.length > 0 && way.detail.length > 0 ? qsTr("%1: %2", "when, what came of it").arg(way.besides).arg(way.detail) : way.besides + way.detail
                kind: "small"
                Layout.fillWidth: true
            }

            Words {
                objectName: "wayTrouble"
                visible: text.length > 0
                text: way.flags.join(" ")
                kind: "error"
                Layout.fillWidth: true
            }

            PlainButton {
                objectName: "removeWay"
                text: qsTr("No longer this way")
                Layout.fillWidth: true
                onClicked: root.model.removeWay(way.key)
            }
        }
    }

    GridLayout {
        visible: root.adding.length === 0
        columns: Theme.textScale > 1.3 ? 1 : 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        PlainButton {
            objectName: "addFolder"
            text: qsTr("Add a folder")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onClicked: root.adding = "folder"
        }

        PlainButton {
            objectName: "addHub"
            text: root.model.hasHub ? qsTr("Another hub") : qsTr("Add a hub")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onClicked: root.adding = "hub"
        }
    }

    Card {
        visible: root.adding === "folder"
        Layout.fillWidth: true

        NoticeBar {
            objectName: "folderNote"
            text: qsTr("Whoever can open this folder can read all of it: counts, fields and names. A stick or a folder of the programme’s own is best.")
            Layout.fillWidth: true
        }

        FieldPath {
            objectName: "folder"
            label: qsTr("A folder that the others can open too")
            path: root.folder
            Layout.fillWidth: true
            onEdited: path => root.folder = root.model.pathOf(path)
        }

        InkButton {
            objectName: "takeFolder"
            text: qsTr("Exchange by this folder")
            enabled: root.folder.trim().length > 0
            Layout.fillWidth: true
            onClicked: root.done(root.model.addFolder(root.folder))
        }

        PlainButton {
            text: qsTr("Not now")
            Layout.fillWidth: true
            onClicked: root.adding = ""
        }
    }

    Card {
        visible: root.adding === "hub"
        Layout.fillWidth: true

        FieldText {
            objectName: "hub"
            label: qsTr("Address of the hub")
            hint: qsTr("Such as hub.example, from whoever keeps it.")
            text: root.hub
            maximumLength: 300
            inputMethodHints: Qt.ImhUrlCharactersOnly | Qt.ImhNoAutoUppercase
            Layout.fillWidth: true
            onEdited: text => root.hub = text
        }

        FieldText {
            objectName: "founding"
            label: qsTr("Founding code")
            hint: qsTr("Only to bring the programme to the hub for the first time. Otherwise leave it empty.")
            text: root.founding
            maximumLength: 40
            inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhUppercaseOnly
            Layout.fillWidth: true
            onEdited: text => root.founding = text
        }

        InkButton {
            objectName: "takeHub"
            text: qsTr("Exchange by this hub")
            enabled: root.hub.trim().length > 0
            Layout.fillWidth: true
            onClicked: root.done(root.model.addHub(root.hub, root.founding))
        }

        PlainButton {
            text: qsTr("Not now")
            Layout.fillWidth: true
            onClicked: root.adding = ""
        }
    }
}
