// SPDX-License-Identifier: MIT
// A drawn chevron; pointing back it follows the reading direction.
import QtQuick
import QtQuick.Shapes
import Duskrow.Theme

Item {
    id: root

    property bool back: false
    property color colour: Theme.ink

    implicitWidth: Math.round(10 * Math.min(Theme.textScale, 1.6))
    implicitHeight: Math.round(18 * Math.min(Theme.textScale, 1.6))

    Shape {
        anchors.fill: parent
        transform: Scale {
            origin.x: root.width / 2
            xScale: root.back !== (Application.layoutDirection === Qt.RightToLeft) ? 1 : -1
        }

        ShapePath {
            strokeColor: root.colour
            strokeWidth: 2.5
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap
            joinStyle: ShapePath.RoundJoin
            startX: root.width - 2
            startY: 2

            PathLine {
                x: 2
                y: root.height / 2
            }

            PathLine {
                x: root.width - 2
                y: root.height - 2
            }
        }
    }
}
