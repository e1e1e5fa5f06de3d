// SPDX-License-Identifier: MIT
// The content of a page, one thing below another; where it fills, at least as high as the room there is.
import QtQuick
import QtQuick.Layouts

ColumnLayout {
    id: root

    property bool fills: false
    property real room: 0

    height: root.fills ? Math.max(root.implicitHeight, root.room) : root.implicitHeight
}
