// SPDX-License-Identifier: MIT
// Boundaries and lines of the coordinator's own files, shown on this device.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property MapViewModel model
    property bool isOpen: false
    property string file: ""

    spacing: Theme.gapSmall

    Repeater {
        model: root.model.overlays

        Card {
            id: overlay

            required property int index
            required property string key
            required property string title
            required property string besides
            objectName: "overlay" + overlay.index
            Layout.fillWidth: true

            Words {
                text: overlay.title
                kind: "strong"
                wrapMode: Text.WrapAnywhere
                Layout.fillWidth: true
            }

            Words {
                objectName: "besides"
                text: overlay.besides
                kind: "soft"
                Layout.fillWidth: true
            }

            PlainButton {
                objectName: "dropOverlay"
                text: qsTr("Leave it out")
                Layout.fillWidth: true
                onClicked: root.model.dropOverlay(overlay.key)
            }
        }
    }

    PlainButton {
        objectName: "openOverlay"
        visible: !root.isOpen
        text: qsTr("Add boundaries from a file")
        Layout.fillWidth: true
        onClicked: root.isOpen = true
    }

    Card {
        visible: root.isOpen
        Layout.fillWidth: true

        FieldPath {
            objectName: "overlayFile"
            label: qsTr("A file of boundaries or lines")
            hint: qsTr("GeoJSON, such as districts or roads. It stays on this device.")
            isFolder: false
            filters: [qsTr("GeoJSON (*.geojson *.json)"), qsTr("All files (*)")]
            path: root.file
            Layout.fillWidth: true
            onEdited: path => root.file = root.model.pathOf(path)
        }

        NoticeBar {
            objectName: "overlayTrouble"
            visible: root.model.overlayTrouble.length > 0
            kind: "caution"
            text: root.model.overlayTrouble
            Layout.fillWidth: true
        }

        InkButton {
            objectName: "addOverlay"
            text: qsTr("Show it on the map")
            enabled: root.file.trim().length > 0
            Layout.fillWidth: true
            onClicked: root.model.addOverlay(root.file)
        }

        PlainButton {
            text: qsTr("Not now")
            Layout.fillWidth: true
            onClicked: root.isOpen = false
        }
    }
}
