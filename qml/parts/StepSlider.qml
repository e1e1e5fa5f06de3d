// SPDX-License-Identifier: MIT
// One of many in a row, as weeks are: dragged, touched, or moved by the arrow keys one at a time.
import QtQuick
import QtQuick.Templates as T
import Duskrow.Theme

T.Slider {
    id: root

    required property string label // read aloud
    property string spoken: "" // what the value means
    property int last: 0 // the first is 0

    signal stepped(int value)

    implicitWidth: 200
    implicitHeight: Theme.touch
    from: 0
    to: Math.max(1, root.last)
    stepSize: 1
    snapMode: T.Slider.SnapAlways
    enabled: root.last > 0
    focusPolicy: Qt.StrongFocus
    onMoved: root.stepped(Math.round(root.value))

    Accessible.role: Accessible.Slider
    Accessible.name: root.label
    Accessible.description: root.spoken

    background: Rectangle {
        x: root.leftPadding
        y: (root.height - height) / 2
        width: root.availableWidth
        height: 6
        radius: 3
        color: Theme.line

        Rectangle {
            width: root.visualPosition * parent.width
            height: parent.height
            radius: 3
            color: Theme.edge
        }
    }

    handle: Rectangle {
        x: root.leftPadding + root.visualPosition * (root.availableWidth - width)
        y: (root.height - height) / 2
        width: 28
        height: 28
        radius: 14
        color: root.enabled ? Theme.act : Theme.edge
        border.width: 2
        border.color: Theme.card

        FocusRing {
            shown: root.visualFocus
            inner: 14
        }
    }
}
