// SPDX-License-Identifier: MIT
// The ring that shows where the keyboard is; it stands a little outside of what it surrounds.
import QtQuick
import Duskrow.Theme

Rectangle {
    id: root

    required property bool shown
    property real inner: Theme.radius
    property int gap: Theme.ring

    anchors.fill: parent
    anchors.margins: -(root.gap + Theme.ring)
    visible: root.shown
    z: 1
    color: "transparent"
    radius: root.inner + root.gap + Theme.ring
    border.width: Theme.ring
    border.color: Theme.focus
}
