// SPDX-License-Identifier: MIT
// The lure is changed: first, once a day, how it is handled; then its lot and the day on its packet.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

LifeAct {
    id: root

    title: root.model.needsReminder ? qsTr("Before you open the lure") : qsTr("New lure")
    dayShown: !root.model.needsReminder
    canKeep: !root.model.needsReminder && expiry.valid
    keepVisible: !root.model.needsReminder

    HandlingPicture {
        objectName: "handling"
        visible: root.model.needsReminder
        noText: qsTr("Never with bare fingers")
        yesText: qsTr("With forceps, or tipped from its packet")
        Layout.fillWidth: true
    }

    LifeLines {
        visible: root.model.needsReminder
        lines: root.model.handling
        Layout.fillWidth: true
    }

    TrapPicture {
        visible: !root.model.needsReminder
        kind: root.model.trapShape
        description: bucket ? qsTr("The trap cut open; the lure hangs in its basket under the lid") : qsTr("The trap; its lure hangs inside")
        highlight: "lure"
        label: bucket ? qsTr("The new lure, in its basket") : qsTr("The new lure, inside the trap")
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "lot"
        visible: !root.model.needsReminder
        label: qsTr("Lot on the packet")
        hint: qsTr("May stay empty.")
        text: root.form.lot
        Layout.fillWidth: true
        onEdited: text => root.form.lot = text
    }

    FieldDay {
        id: expiry
        objectName: "expiry"
        visible: !root.model.needsReminder
        label: qsTr("Use by, on the packet")
        hint: qsTr("May stay empty.")
        day: root.form.expiry
        today: root.model.today
        Layout.fillWidth: true
        onEdited: day => root.form.expiry = day
    }

    pinnedExtra: ActButton {
        objectName: "handlingRead"
        visible: root.model.needsReminder
        text: qsTr("I handle it like that")
        Layout.fillWidth: true
        onClicked: {
            root.model.acknowledgeHandling();
            root.scrollToTop();
        }
    }
}
