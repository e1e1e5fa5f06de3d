// SPDX-License-Identifier: MIT
// Set-up: the lure goes into its basket.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

SetupPage {
    id: root

    readonly property SetupTrap trap: root.model.trap

    valid: expiry.valid

    TrapPicture {
        objectName: "trapPicture"
        kind: root.trap.trapShape
        description: bucket ? qsTr("The trap cut open; the lure hangs in its basket under the lid") : qsTr("The trap; its lure hangs inside")
        highlight: "lure"
        label: bucket ? qsTr("The lure, in its basket under the lid") : qsTr("The lure, inside the trap")
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "lureLot"
        label: qsTr("Lot on the packet")
        hint: qsTr("May stay empty.")
        text: root.trap.lureLot
        error: root.trap.lotError
        Layout.fillWidth: true
        onEdited: text => root.trap.lureLot = text
    }

    FieldDay {
        id: expiry
        objectName: "lureExpiry"
        label: qsTr("Use by, on the packet")
        emptyAllowed: true
        day: root.trap.lureExpiry
        today: root.trap.today
        Layout.fillWidth: true
        onEdited: day => root.trap.lureExpiry = day
        onCleared: root.trap.lureExpiry = ""
    }

    NoticeBar {
        objectName: "expired"
        visible: root.trap.expiryNote.length > 0
        kind: "caution"
        text: root.trap.expiryNote
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "withoutLure"
        text: root.trap.lureIn ? qsTr("The lure is not in after all") : qsTr("Go on without the lure")
        Layout.fillWidth: true
        onClicked: root.model.leaveOut()
    }
}
