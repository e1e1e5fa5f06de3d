// SPDX-License-Identifier: MIT
// Set-up: the trap itself, clean and labelled.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

SetupPage {
    id: root

    readonly property SetupTrap trap: root.model.trap

    spacing: Theme.gapWide

    FieldText {
        objectName: "tag"
        label: qsTr("Tag, as written on the trap")
        text: root.trap.tag
        error: root.trap.tagError
        hint: root.trap.tagNote
        Layout.fillWidth: true
        onEdited: text => root.trap.tag = text
    }

    ChoiceChips {
        objectName: "pest"
        visible: keys.length > 1
        label: qsTr("It catches")
        keys: root.trap.pestKeys
        labels: root.trap.pestLabels
        chosen: root.trap.pest
        Layout.fillWidth: true
        onPicked: key => root.trap.pest = key
    }

    ColumnLayout {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        ChoiceChips {
            objectName: "trapType"
            visible: keys.length > 1
            label: qsTr("Kind of trap")
            keys: root.trap.typeKeys
            labels: root.trap.typeLabels
            chosen: root.trap.trapType
            Layout.fillWidth: true
            onPicked: key => root.trap.trapType = key
        }

        Words {
            visible: text.length > 0
            text: root.trap.typeRemark
            kind: "soft"
            Layout.fillWidth: true
        }
    }

    ChoiceChips {
        objectName: "pairedWith"
        visible: keys.length > 0
        label: qsTr("One of a pair? Both counts are kept, never summed.")
        keys: root.trap.pairKeys
        labels: root.trap.pairLabels
        chosen: root.trap.pairedWith || "none"
        Layout.fillWidth: true
        onPicked: key => root.trap.pairedWith = key === "none" ? "" : key
    }

    ToggleRow {
        objectName: "cleaned"
        text: qsTr("The trap is clean")
        detail: qsTr("Old catch, old lure and litter are out of it.")
        checked: root.trap.cleaned
        Layout.fillWidth: true
        onToggled: root.trap.cleaned = checked
    }

    Card {
        Layout.fillWidth: true

        Words {
            text: qsTr("Write on it, in pencil or paint")
            kind: "soft"
            Layout.fillWidth: true
        }

        Words {
            objectName: "inkLabel"
            text: root.trap.inkLabel
            kind: "strong"
            Layout.fillWidth: true
        }
    }
}
