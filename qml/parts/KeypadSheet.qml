// SPDX-License-Identifier: MIT
// The number sheet over the page.
import QtQuick
import QtQuick.Layouts

Sheet {
    id: root

    required property string label
    property alias doneText: keypad.doneText

    signal accepted(int value)

    name: root.label
    onAboutToShow: keypad.digits = ""
    onOpened: keypad.forceActiveFocus(Qt.PopupFocusReason)

    Keypad {
        id: keypad
        objectName: "keypad"
        label: root.label
        focus: true
        Layout.fillWidth: true
        onAccepted: value => {
            root.settle();
            root.accepted(value);
        }
    }
}
