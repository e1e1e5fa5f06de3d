// SPDX-License-Identifier: MIT
// The small trap of the stake picture, to scale: of a bucket lid, gap (the entrance), collar and bucket; any other as
// its sketch; and the stake.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    // The middle of the entrance and the ground, in pixels from the top; pixels per millimetre.
    required property real entrance
    required property real ground
    required property real perMm
    property string kind: "bucket"
    readonly property bool bucket: root.kind === "bucket"
    readonly property real wide: Math.max(26, 165 * root.perMm)
    readonly property real gap: Math.max(5, 24 * root.perMm)

    Rectangle {
        x: -width / 2
        y: root.entrance - 130 * root.perMm
        width: Math.max(4, 22 * root.perMm)
        height: root.ground - y + 4
        radius: 2
        color: Theme.wood
    }

    // Any other trap
    TrapSketch {
        visible: !root.bucket
        kind: root.kind
        scale: root.wide / 136
        transformOrigin: Item.TopLeft
        x: -80 * scale
        y: root.entrance - entrance.y * scale
        pen: 0.6 / scale
    }

    // Bucket
    Rectangle {
        visible: root.bucket
        x: -root.wide * 0.41
        y: root.entrance + root.gap / 2 + root.wide * 0.1
        width: root.wide * 0.82
        height: root.wide * 0.72
        radius: root.wide * 0.12
        color: Theme.trapBucket
        border.width: 1.5
        border.color: Theme.trapGreenDark
    }

    // Collar
    Rectangle {
        visible: root.bucket
        x: -root.wide / 2
        y: root.entrance + root.gap / 2
        width: root.wide
        height: root.wide * 0.2
        radius: height / 2
        color: Theme.trapGreen
        border.width: 1
        border.color: Theme.trapGreenDark
    }

    // The dark of the entrance between two posts
    Rectangle {
        x: -root.wide * 0.34
        y: root.entrance - root.gap / 2
        width: root.wide * 0.68
        height: root.gap
        color: Theme.pill
    }

    // Lid
    Rectangle {
        visible: root.bucket
        x: -root.wide * 0.46
        y: root.entrance - root.gap / 2 - height
        width: root.wide * 0.92
        height: root.wide * 0.24
        radius: height / 2
        color: Theme.trapGreen
        border.width: 1
        border.color: Theme.trapGreenDark
    }

    // Cap of the lure basket
    Rectangle {
        visible: root.bucket
        x: -root.wide * 0.11
        y: root.entrance - root.gap / 2 - root.wide * 0.33
        width: root.wide * 0.22
        height: root.wide * 0.14
        radius: 2
        color: Theme.trapGreenDark
    }
}
