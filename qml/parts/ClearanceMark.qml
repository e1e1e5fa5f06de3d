// SPDX-License-Identifier: MIT
// An upright measure with a foot at each end: from the canopy to the entrance.
import QtQuick
import Duskrow.Theme

Rectangle {
    id: root

    readonly property int foot: 10

    width: 2
    color: Theme.next

    Rectangle {
        x: (root.width - width) / 2
        width: root.foot
        height: root.width
        color: root.color
    }

    Rectangle {
        x: (root.width - width) / 2
        y: root.height - height - 1
        width: root.foot
        height: root.width
        color: root.color
    }
}
