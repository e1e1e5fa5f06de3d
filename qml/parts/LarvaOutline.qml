// SPDX-License-Identifier: MIT
// A larva drawn from above, as long as it is wide here: head, body rings, the light stripe along the side.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    property bool filled: true
    readonly property int rings: Math.max(3, Math.round(root.width / root.height))

    implicitWidth: 60
    implicitHeight: 12

    Rectangle {
        anchors.fill: parent
        radius: height / 2
        color: root.filled ? Theme.soil : "transparent"
        border.width: 1.5
        border.color: Theme.soilDark
        clip: true

        // qmllint disable unqualified
        Each {
            model: root.rings

            Rectangle {
                required property int index
                x: (index + 1) * root.width / (root.rings + 1)
                width: 1
                height: parent.height
                color: Theme.soilDark
                opacity: 0.6
            }
        }
        // qmllint enable unqualified

        Rectangle {
            y: parent.height * 0.62
            width: parent.width
            height: Math.max(1.5, parent.height * 0.16)
            visible: root.filled
            color: Theme.flower
        }
    }

    Rectangle {
        width: root.height
        height: root.height
        radius: height / 2
        color: Theme.skin
        border.width: 1.5
        border.color: Theme.soilDark
    }
}
