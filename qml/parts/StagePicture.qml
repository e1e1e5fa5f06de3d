// SPDX-License-Identifier: MIT
// The top of a canola plant at a crop stage (BBCH): buds, flowers and pods from the tip down, as far along as the code says.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property int stage
    readonly property int rows: 6
    readonly property real flowering: (root.stage - 59) / 10 // share of the flowers that opened
    readonly property real podSize: root.stage < 65 ? 0.15 : root.stage >= 79 ? 1 : root.stage >= 71 ? 0.4 + (root.stage - 71) * 0.07 : 0.3
    readonly property real ripe: root.stage < 80 ? 0 : Math.min(1, (root.stage - 79) / 10)
    readonly property color podColour: Qt.rgba(Theme.pod.r + (Theme.strip.r - Theme.pod.r) * root.ripe, Theme.pod.g + (Theme.strip.g - Theme.pod.g) * root.ripe, Theme.pod.b + (Theme.strip.b - Theme.pod.b) * root.ripe, 1)

    // From below upwards: pods, open flowers, buds.
    function kind(row: int): string {
        const fromBelow = 1 - (row + 0.5) / root.rows;
        if (root.stage < 60)
            return "bud";
        if (root.stage < 65)
            return fromBelow < root.flowering ? "flower" : "bud";
        if (root.stage < 67)
            return fromBelow < 0.17 ? "pod" : fromBelow < 0.67 ? "flower" : "bud";
        return root.stage < 69 && fromBelow > 0.6 ? "flower" : "pod";
    }

    implicitWidth: 44
    implicitHeight: 64

    Accessible.ignored: true

    Rectangle {
        x: (root.width - width) / 2
        y: root.height * 0.08
        width: 3
        height: root.height * 0.92
        radius: 1.5
        color: Theme.stem
    }

    // qmllint disable unqualified
    Each {
        model: root.rows * 2

        Item {
            id: spot
            required property int index
            readonly property int row: Math.floor(spot.index / 2)
            readonly property bool isRight: spot.index % 2 === 1
            readonly property string what: root.kind(spot.row)
            x: root.width / 2
            y: root.height * (0.06 + 0.8 * spot.row / root.rows)

            Rectangle {
                visible: spot.what === "pod"
                x: spot.isRight ? 1 : -1 - width
                width: Math.max(5, root.width * 0.46 * root.podSize)
                height: 3 + 2 * root.podSize
                radius: height / 2
                rotation: spot.isRight ? -28 : 28
                transformOrigin: spot.isRight ? Item.Left : Item.Right
                color: root.podColour
                border.width: 0.7
                border.color: Theme.stemDark
            }

            Rectangle {
                visible: spot.what === "flower"
                x: spot.isRight ? 3 : -3 - width
                y: -3
                width: 9
                height: 9
                radius: 4.5
                color: Theme.flower
                border.width: 0.7
                border.color: Theme.wood
            }

            Rectangle {
                visible: spot.what === "bud"
                x: spot.isRight ? 1.5 : -1.5 - width
                y: -2
                width: 5
                height: 6
                radius: 2.5
                color: Theme.pod
                border.width: 0.7
                border.color: Theme.stemDark
            }
        }
    }
    // qmllint enable unqualified
}
