// SPDX-License-Identifier: MIT
// Sentences below each other, each behind a small mark.
import QtQuick
import Duskrow.Parts
import Duskrow.Theme

Column {
    id: root

    required property list<string> lines

    spacing: Theme.gap

    // qmllint disable unqualified
    Each {
        model: root.lines

        Item {
            id: line

            required property string modelData

            width: root.width
            implicitHeight: words.implicitHeight

            Rectangle {
                y: Math.round(Theme.typeBody * 0.45)
                width: 8
                height: 8
                radius: 4
                color: Theme.next
                border.width: Theme.hairline
                border.color: Theme.ink
            }

            Words {
                id: words
                x: Theme.gapWide
                width: line.width - x
                text: line.modelData
            }
        }
    }
    // qmllint enable unqualified
}
