// SPDX-License-Identifier: MIT
// What stands beside the place in a wide window: a line between, and a word where no page is open.
import QtQuick
import Duskrow.Parts
import Duskrow.Theme

Item {
    id: root

    property bool isEmpty: true

    Rectangle {
        width: Theme.hairline
        height: parent.height
        color: Theme.line
    }

    EmptyState {
        visible: root.isEmpty
        anchors.centerIn: parent
        width: Math.min(Theme.contentWidth, root.width - 2 * Theme.margin)
        title: qsTr("Choose a trap")
        text: qsTr("Its season, its visits and its life open here.")
    }
}
