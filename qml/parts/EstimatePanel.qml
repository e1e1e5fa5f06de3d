// SPDX-License-Identifier: MIT
// What a walk comes to, on the dark ground of the act: the density, its range, and what to do next.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

Rectangle {
    id: root

    required property string mean
    required property string range
    required property string call

    implicitWidth: 280
    implicitHeight: column.implicitHeight + 2 * Theme.padding
    radius: Theme.radius
    color: Theme.act

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.padding
        spacing: Theme.gapTiny

        Words {
            objectName: "mean"
            visible: text.length > 0
            text: root.mean
            kind: "heading"
            color: Theme.actInk
            Layout.fillWidth: true
        }

        Words {
            objectName: "range"
            visible: text.length > 0
            text: root.range
            kind: "small"
            color: Theme.actInkSoft
            Layout.fillWidth: true
        }

        Words {
            objectName: "call"
            visible: text.length > 0
            text: root.call
            kind: "small"
            color: Theme.next
            font.weight: Font.DemiBold
            Layout.fillWidth: true
        }
    }
}
