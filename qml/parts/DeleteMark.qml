// SPDX-License-Identifier: MIT
// The drawn sign for taking away the last digit, so that it does not hang on a font having the glyph.
import QtQuick
import QtQuick.Shapes
import Duskrow.Theme

Shape {
    width: 30
    height: 22

    ShapePath {
        strokeColor: Theme.ink
        strokeWidth: 2.2
        fillColor: "transparent"
        capStyle: ShapePath.RoundCap
        joinStyle: ShapePath.RoundJoin

        PathSvg {
            path: "M 10 2 L 28 2 L 28 20 L 10 20 L 2 11 Z M 14 7.5 L 22 14.5 M 22 7.5 L 14 14.5"
        }
    }
}
