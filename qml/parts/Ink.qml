// SPDX-License-Identifier: MIT
// One drawn line or area, as an SVG path.
import QtQuick
import QtQuick.Shapes

Shape {
    id: root

    required property string path
    property color fill: "transparent"
    property color stroke: "transparent"
    property real strokeWidth: 1
    property int strokeStyle: ShapePath.SolidLine
    property list<real> dashes: [4, 4]

    ShapePath {
        strokeColor: root.stroke
        strokeWidth: root.stroke.a > 0 ? root.strokeWidth : -1
        strokeStyle: root.strokeStyle
        dashPattern: root.dashes
        fillColor: root.fill
        capStyle: ShapePath.RoundCap
        joinStyle: ShapePath.RoundJoin

        PathSvg {
            path: root.path
        }
    }
}
