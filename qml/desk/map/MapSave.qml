// SPDX-License-Identifier: MIT
// What is seen of the map, with its key, as a file.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property MapViewModel model
    property bool isOpen: false
    property string folder: root.model.documents()

    signal writeWanted(string folder)

    spacing: Theme.gapSmall

    NoticeBar {
        objectName: "written"
        visible: root.model.written.length > 0
        kind: "kept"
        text: qsTr("Written: %1").arg(root.model.written)
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "openSave"
        visible: !root.isOpen
        text: qsTr("Save the map as a picture")
        Layout.fillWidth: true
        onClicked: root.isOpen = true
    }

    Card {
        visible: root.isOpen
        Layout.fillWidth: true

        Words {
            text: qsTr("It shows where every trap stands: for the desk, not for the public.")
            kind: "soft"
            Layout.fillWidth: true
        }

        FieldPath {
            objectName: "saveFolder"
            label: qsTr("Folder for the picture")
            path: root.folder
            Layout.fillWidth: true
            onEdited: path => root.folder = root.model.pathOf(path)
        }

        InkButton {
            objectName: "writeMap"
            text: qsTr("Save it as SVG")
            enabled: root.folder.trim().length > 0
            Layout.fillWidth: true
            onClicked: {
                root.writeWanted(root.folder);
                root.isOpen = false;
            }
        }

        PlainButton {
            text: qsTr("Not now")
            Layout.fillWidth: true
            onClicked: root.isOpen = false
        }
    }
}
