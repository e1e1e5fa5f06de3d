// SPDX-License-Identifier: MIT
// A number in a small disc: it ties a mark in a picture to its sentence.
import QtQuick
import Duskrow.Theme

Rectangle {
    id: root

    required property int number

    width: Math.round(24 * Math.min(Theme.textScale, 1.3))
    height: width
    radius: width / 2
    color: Theme.ink

    Text {
        anchors.centerIn: parent
        text: root.number
        color: Theme.paper
        font.family: Theme.family
        font.pixelSize: Math.round(root.width * 0.66)
        font.weight: Font.Bold
        Accessible.ignored: true
    }
}
