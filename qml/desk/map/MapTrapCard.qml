// SPDX-License-Identifier: MIT
// The trap that was touched on the map, and the way to its season.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

Card {
    id: root

    required property MapViewModel model

    signal opened(string route, string subject)

    Words {
        objectName: "nothingChosen"
        visible: root.model.trap.length === 0
        text: qsTr("Touch a trap to see what it caught.")
        kind: "soft"
        Layout.fillWidth: true
    }

    Words {
        objectName: "trapTitle"
        visible: root.model.trap.length > 0
        text: root.model.title
        kind: "head"
        Layout.fillWidth: true
    }

    BandDots {
        objectName: "trapBand"
        visible: root.model.band > 0
        band: root.model.band
        name: root.model.bandName
        Layout.fillWidth: true
    }

    Repeater {
        model: root.model.facts

        FactRow {
            required property string title
            required property string besides
            label: title
            value: besides
            Layout.fillWidth: true
        }
    }

    PlainButton {
        objectName: "openSeason"
        visible: root.model.trap.length > 0
        text: qsTr("Open its season")
        Layout.fillWidth: true
        onClicked: root.opened("season", root.model.trap)
    }
}
