// SPDX-License-Identifier: MIT
// One file that is handed on by hand: written for everybody or for one person, and opened.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property ExchangeViewModel model
    property string doing: "" // write or open
    property string folder: root.model.folder
    property string member: "all" // or who the file is for
    property string file: ""

    signal opened(string route, string subject)

    spacing: Theme.gap

    SectionLabel {
        text: qsTr("One file to hand on")
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "written"
        visible: root.model.written.length > 0
        kind: "kept"
        text: root.model.written
        Layout.fillWidth: true
    }

    GridLayout {
        visible: root.doing.length === 0
        columns: Theme.textScale > 1.3 ? 1 : 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        PlainButton {
            objectName: "writeFile"
            text: qsTr("Write a file")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onClicked: root.doing = "write"
        }

        PlainButton {
            objectName: "openFile"
            text: qsTr("Open a file")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onClicked: root.doing = "open"
        }
    }

    Card {
        visible: root.doing === "write"
        Layout.fillWidth: true

        ChoiceChips {
            objectName: "forWhom"
            label: qsTr("For whom?")
            keys: ["all"].concat(root.model.memberKeys)
            labels: [qsTr("everybody: all of it")].concat(root.model.memberNames)
            chosen: root.member
            Layout.fillWidth: true
            onPicked: key => root.member = key
        }

        Words {
            visible: root.member !== "all"
            text: qsTr("Only what is not known to have reached this person.")
            kind: "soft"
            Layout.fillWidth: true
        }

        FieldPath {
            objectName: "fileFolder"
            label: qsTr("Folder for the file")
            path: root.folder
            Layout.fillWidth: true
            onEdited: path => root.folder = root.model.pathOf(path)
        }

        InkButton {
            objectName: "write"
            text: qsTr("Write the file")
            Layout.fillWidth: true
            onClicked: {
                root.model.writeFile(root.folder, root.member === "all" ? "" : root.member);
                root.doing = "";
            }
        }

        PlainButton {
            text: qsTr("Not now")
            Layout.fillWidth: true
            onClicked: root.doing = ""
        }
    }

    Card {
        visible: root.doing === "open"
        Layout.fillWidth: true

        FieldPath {
            objectName: "file"
            label: qsTr("A file from somebody else")
            hint: qsTr("Its name ends in .dusk. You see what it would bring before anything is taken in.")
            isFolder: false
            filters: [qsTr("Carried files (*.dusk)"), qsTr("All files (*)")]
            path: root.file
            Layout.fillWidth: true
            onEdited: path => root.file = root.model.pathOf(path)
        }

        InkButton {
            objectName: "look"
            text: qsTr("Look into it")
            enabled: root.file.trim().length > 0
            Layout.fillWidth: true
            onClicked: root.opened("carried", root.file.trim())
        }

        PlainButton {
            text: qsTr("Not now")
            Layout.fillWidth: true
            onClicked: root.doing = ""
        }
    }
}
