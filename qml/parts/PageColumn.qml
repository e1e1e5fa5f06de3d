// SPDX-License-Identifier: MIT
// The content of a page, one thing below another; where it fills, at least as high as the room there is.
//
// A layout of Qt 6.4 that gets another height before it has noticed that one of its items was destroyed still arranges
// that item, and the program dies. So it is made to notice before its height follows the room.
import QtQuick
import QtQuick.Layouts

ColumnLayout {
    id: root

    property bool fills: false
    property real room: 0
    property real fullHeight: 0

    function fill(): void {
        if (!root.fills)
            return;
        root.ensurePolished();
        root.fullHeight = Math.max(root.implicitHeight, root.room);
    }

    height: root.fills ? root.fullHeight : implicitHeight
    onFillsChanged: root.fill()
    onRoomChanged: root.fill()
    // Often told in the middle of arranging, where arranging must not begin again.
    onImplicitHeightChanged: Qt.callLater(root.fill) // qmllint disable
}
