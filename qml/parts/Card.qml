// SPDX-License-Identifier: MIT
// A white sheet with round corners; children stand below each other.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

Rectangle {
    id: root

    default property alias content: column.data
    property alias spacing: column.spacing
    property int padding: Theme.padding

    implicitWidth: column.implicitWidth + 2 * root.padding
    implicitHeight: column.implicitHeight + 2 * root.padding
    color: Theme.card
    radius: Theme.radius
    border.width: Theme.hairline
    border.color: Theme.line

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: root.padding
        spacing: Theme.gapSmall
    }
}
