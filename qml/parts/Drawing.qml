// SPDX-License-Identifier: MIT
// A picture drawn in its own units and scaled to the width it is given; what is inside stands in those units.
import QtQuick

Item {
    id: root

    required property string description
    property real unitsWide: 200
    property real unitsHigh: 120
    readonly property real factor: Math.min(root.width / root.unitsWide, root.height / root.unitsHigh)
    default property alias content: sheet.data

    // Where a point of the picture lies in this item.
    function place(x: real, y: real): point {
        return Qt.point(sheet.x + x * root.factor, sheet.y + y * root.factor);
    }

    implicitWidth: 280
    implicitHeight: Math.round(root.width * root.unitsHigh / root.unitsWide)

    Accessible.role: Accessible.Graphic
    Accessible.name: root.description

    Item {
        id: sheet
        x: (root.width - root.unitsWide * root.factor) / 2
        y: (root.height - root.unitsHigh * root.factor) / 2
        width: root.unitsWide
        height: root.unitsHigh
        transformOrigin: Item.TopLeft
        scale: root.factor
    }
}
