// SPDX-License-Identifier: MIT
// Slanted lines: what is not known, or where something is wrong.
import QtQuick
import QtQuick.Shapes
import Duskrow.Theme

Item {
    id: root

    property color colour: Theme.edge
    property real step: 8
    property real thickness: 1.5

    // The lines of the hatch, each cut at the edges, so that nothing has to be clipped.
    function lines(w: real, h: real): string {
        let path = "";
        for (let at = root.step / 2; at < w + h; at += root.step) {
            const x1 = Math.min(at, w);
            const y1 = at - x1;
            const y2 = Math.min(at, h);
            const x2 = at - y2;
            path += "M " + x1 + " " + y1 + " L " + x2 + " " + y2 + " ";
        }
        return path.length > 0 ? path : "M 0 0";
    }

    Shape {
        anchors.fill: parent

        ShapePath {
            strokeColor: root.colour
            strokeWidth: root.thickness
            fillColor: "transparent"

            PathSvg {
                path: root.lines(root.width, root.height)
            }
        }
    }
}
