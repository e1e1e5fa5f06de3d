// SPDX-License-Identifier: MIT
// Paints the ground over the corners of a picture; a mask would not show on the software renderer.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    property color ground: Theme.paper
    property real r: Theme.radius

    function corner(sweep: string, x: real, y: real, dx: real, dy: real): string {
        const arc = " a " + root.r + " " + root.r + " 0 0 " + sweep + " ";
        return "M " + x + " " + y + " l 0 " + dy + arc + dx + " " + (-dy) + " z ";
    }

    function topCorners(): string {
        const right = root.corner("0", root.width, 0, -root.r, root.r);
        return root.corner("1", 0, 0, root.r, root.r) + right;
    }

    function bottomCorners(): string {
        const right = root.corner("1", root.width, root.height, -root.r, -root.r);
        return root.corner("0", 0, root.height, root.r, -root.r) + right;
    }

    anchors.fill: parent

    Ink {
        anchors.fill: parent
        fill: root.ground
        path: root.topCorners() + root.bottomCorners()
    }
}
