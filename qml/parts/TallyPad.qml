// SPDX-License-Identifier: MIT
// The large dark area under the thumb: each touch is one more. Keys do the same, and take one away.
import QtQuick
import Duskrow.Theme

FocusScope {
    id: root

    required property string label
    property string text: "+1"
    property string hint: ""
    readonly property real hintHeight: root.hint.length > 0 ? hintWords.implicitHeight : 0
    readonly property bool pressed: touch.pressed && touch.containsMouse

    signal stepped(int by)

    implicitWidth: 200
    implicitHeight: plus.implicitHeight + root.hintHeight + 2 * Theme.padding
    activeFocusOnTab: true

    Accessible.role: Accessible.Button
    Accessible.name: root.label
    Accessible.description: root.hint
    Accessible.focusable: true
    Accessible.onPressAction: root.stepped(1)
    Accessible.onIncreaseAction: root.stepped(1)
    Accessible.onDecreaseAction: root.stepped(-1)

    Keys.onPressed: event => {
        switch (event.key) {
        case Qt.Key_Space:
        case Qt.Key_Up:
        case Qt.Key_Plus:
        case Qt.Key_VolumeUp:
            event.accepted = true;
            root.stepped(1);
            break;
        case Qt.Key_Down:
        case Qt.Key_Minus:
        case Qt.Key_Backspace:
        case Qt.Key_VolumeDown:
            event.accepted = true;
            root.stepped(-1);
            break;
        }
    }

    Rectangle {
        anchors.fill: parent
        radius: Theme.radius + Theme.gapSmall
        color: root.pressed ? Theme.actPressed : Theme.act

        FocusRing {
            shown: root.activeFocus
            inner: parent.radius
            gap: Theme.gapTiny / 2
        }
    }

    Words {
        id: plus
        anchors.horizontalCenter: parent.horizontalCenter
        y: (root.height - height - root.hintHeight) / 2
        width: root.width - 2 * Theme.padding
        height: implicitHeight
        text: root.text
        color: Theme.actInk
        font.pixelSize: Math.round(64 * Math.min(Theme.textScale, 1.5))
        font.weight: Font.Bold
        horizontalAlignment: Text.AlignHCenter
        Accessible.ignored: true
    }

    Words {
        id: hintWords
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Theme.padding
        anchors.horizontalCenter: parent.horizontalCenter
        width: root.width - 2 * Theme.padding
        text: root.hint
        kind: "small"
        color: Theme.actInkSoft
        horizontalAlignment: Text.AlignHCenter
        Accessible.ignored: true
    }

    // A gloved touch wanders: it counts if it ends inside, however long it took, and it never scrolls.
    MouseArea {
        id: touch
        anchors.fill: parent
        preventStealing: true
        onPressed: root.forceActiveFocus(Qt.MouseFocusReason)
        onClicked: root.stepped(1)
        // The second of two quick touches comes as this, and must count like any other.
        onDoubleClicked: root.stepped(1)
    }
}
