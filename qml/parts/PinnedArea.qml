// SPDX-License-Identifier: MIT
// What comes next, pinned below a page that scrolls; without height where nothing is pinned.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

Rectangle {
    id: root

    property alias content: column.data
    required property int columnWidth
    property bool isEdged: false // the page goes on beneath

    height: column.implicitHeight > 0 ? column.implicitHeight + Theme.gap + Theme.padding : 0

    Rectangle {
        anchors.left: parent.left
        anchors.right: parent.right
        height: Theme.hairline
        color: Theme.line
        visible: root.isEdged
    }

    ColumnLayout {
        id: column
        x: (root.width - width) / 2
        y: Theme.gap
        width: root.columnWidth
        spacing: Theme.gapSmall
    }
}
