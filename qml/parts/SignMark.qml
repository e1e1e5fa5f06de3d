// SPDX-License-Identifier: MIT
// The small drawn sign of a notice: i, triangle, question mark or tick. Shape and glyph differ, not colour.
import QtQuick
import QtQuick.Shapes
import Duskrow.Theme

Item {
    id: root

    property string kind: "note"
    property color colour: Theme.ink
    readonly property bool asks: root.kind === "caution" || root.kind === "question"
    property color ground: root.asks ? Theme.groundCaution : Theme.groundNote
    readonly property real side: Math.round(28 * Math.min(Theme.textScale, 1.5))

    implicitWidth: root.side
    implicitHeight: root.side

    Rectangle {
        visible: root.kind !== "caution"
        anchors.fill: parent
        radius: width / 2
        color: root.colour
    }

    Shape {
        visible: root.kind === "caution"
        anchors.fill: parent

        ShapePath {
            strokeColor: root.colour
            strokeWidth: 3
            joinStyle: ShapePath.RoundJoin
            fillColor: root.colour
            startX: root.side / 2
            startY: 2.5

            PathLine {
                x: root.side - 2
                y: root.side - 3.5
            }

            PathLine {
                x: 2
                y: root.side - 3.5
            }

            PathLine {
                x: root.side / 2
                y: 2.5
            }
        }
    }

    Text {
        visible: root.kind !== "kept"
        anchors.centerIn: parent
        anchors.verticalCenterOffset: root.kind === "caution" ? root.side * 0.08 : 0
        text: root.kind === "caution" ? "!" : root.kind === "question" ? "?" : "i"
        color: root.ground
        font.family: Theme.family
        font.pixelSize: root.side * (root.kind === "caution" ? 0.6 : 0.68)
        font.weight: Font.Bold
        Accessible.ignored: true
    }

    Shape {
        visible: root.kind === "kept"
        anchors.fill: parent

        ShapePath {
            strokeColor: root.ground
            strokeWidth: 3
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap
            joinStyle: ShapePath.RoundJoin
            startX: root.side * 0.28
            startY: root.side * 0.52

            PathLine {
                x: root.side * 0.44
                y: root.side * 0.68
            }

            PathLine {
                x: root.side * 0.73
                y: root.side * 0.34
            }
        }
    }
}
