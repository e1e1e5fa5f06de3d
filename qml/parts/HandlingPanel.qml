// SPDX-License-Identifier: MIT
// One half of the handling picture: a drawing of 140 by 116 units on a card, and its sentence.
import QtQuick
import Duskrow.Theme

Column {
    id: root

    required property string text
    default property alias content: drawing.content

    spacing: Theme.gapSmall

    Rectangle {
        width: root.width
        height: drawing.height + 2 * Theme.gapSmall
        radius: Theme.radius
        color: Theme.card
        border.width: Theme.hairline
        border.color: Theme.line

        Drawing {
            id: drawing
            x: (parent.width - width) / 2
            y: Theme.gapSmall
            width: Math.min(parent.width - 2 * Theme.gap, 200)
            height: implicitHeight
            unitsWide: 140
            unitsHigh: 116
            description: root.text
        }
    }

    Words {
        width: root.width
        text: root.text
        kind: "small"
        horizontalAlignment: Text.AlignHCenter
        Accessible.ignored: true
    }
}
