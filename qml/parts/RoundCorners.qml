// SPDX-License-Identifier: MIT
// Rounds the corners of a picture by painting the ground over them; a mask would not show on the software renderer.
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

    anchors.fill: parent

    Ink {
        anchors.fill: parent
        fill: root.ground
        path: root.corner("1", 0, 0, root.r, root.r) + root.corner("0", root.width, 0, -root.r, root.r) + root.corner("0", 0,
                                                                                                                     root.height,
                                                                                                                     root.r, -root.r)
              + root.corner("1", root.width, root.height, -root.r, -root.r)
    }
}
