// SPDX-License-Identifier: MIT
// Stake, trap and canopy to scale, with a measuring rod; hatched where the crop hides the entrance.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property string description
    property string kind: "bucket" // of trap
    property int entranceMm: 1000
    property int canopyMm: 0
    property bool entranceKnown: true
    property bool canopyKnown: true
    property string stage: "leafy"
    property string entranceText: ""
    property string canopyText: ""
    property string clearanceText: ""
    property string rodUnit: qsTr("cm", "unit on the measuring rod")
    property color ground: Theme.paper
    readonly property bool hidden: root.entranceKnown && root.canopyKnown && root.entranceMm <= root.canopyMm
    readonly property int highestMm: Math.max(root.entranceKnown ? root.entranceMm + 420 : 0, root.canopyKnown ? root.canopyMm + 420 : 0, 1400)
    readonly property real legendHeight: root.outside ? legend.implicitHeight + Theme.gapSmall : 0
    readonly property real soilHeight: Math.round(scene.height * 0.09)
    readonly property real perMm: (scene.height - root.soilHeight) / root.highestMm
    readonly property real entranceY: root.yOf(root.entranceMm)
    readonly property real canopyY: root.yOf(root.canopyMm)
    readonly property real trapX: rod.width + (scene.width - rod.width) * 0.25
    // In large type the two labels stand below the picture, so that they do not hide it.
    readonly property bool outside: measure.width(root.entranceText, Theme.typeSmall) > scene.width * 0.55

    function yOf(mm: real): real {
        return scene.height - root.soilHeight - mm * root.perMm;
    }

    implicitWidth: 320
    implicitHeight: Math.round(300 * (1 + (Theme.textScale - 1) * 0.4)) + root.legendHeight

    Accessible.role: Accessible.Graphic
    Accessible.name: root.description

    Measure {
        id: measure
    }

    Item {
        id: scene
        width: root.width
        height: root.height - root.legendHeight
        clip: true

        Sky {
            anchors.fill: parent
        }

        CropRow {
            x: rod.width
            width: scene.width - x
            height: scene.height - root.soilHeight
            visible: root.canopyKnown && root.canopyMm > 0
            plantHeight: root.canopyMm * root.perMm
            stage: root.stage
            seed: 7
            far: true
        }

        TrapOnStake {
            x: root.trapX
            kind: root.kind
            visible: root.entranceKnown
            entrance: root.entranceY
            ground: scene.height - root.soilHeight
            perMm: root.perMm
        }

        CropRow {
            x: rod.width
            width: scene.width - x
            height: scene.height - root.soilHeight
            visible: root.canopyKnown && root.canopyMm > 0
            plantHeight: root.canopyMm * root.perMm
            stage: root.stage
            seed: 3
            // In front of the trap the near plants thin out, so that the stake can be seen.
            openAt: root.entranceKnown && !root.hidden ? root.trapX - rod.width : -1
        }

        Rectangle {
            y: scene.height - root.soilHeight
            width: scene.width
            height: root.soilHeight
            color: Theme.soil

            Rectangle {
                width: parent.width
                height: 3
                color: Theme.soilDark
            }
        }

        Hatch {
            visible: root.hidden
            x: rod.width
            y: Math.min(root.canopyY, root.entranceY - 12)
            width: scene.width - x
            height: Math.max(24, root.entranceY - root.canopyY + 12)
            colour: Theme.next
            step: 12
            thickness: 2
        }

        Rectangle {
            visible: root.canopyKnown
            x: rod.width
            y: root.canopyY - 1
            width: scene.width - x
            height: 2
            color: Theme.skyInk
        }

        MeasuringRod {
            id: rod
            height: scene.height - root.soilHeight
            perMm: root.perMm
            unit: root.rodUnit
        }

        Rectangle {
            visible: entrancePill.visible
            x: root.trapX
            y: root.entranceY - 1
            width: entrancePill.x - x
            height: 2
            color: Theme.skyInk
        }

        Pill {
            id: entrancePill
            // Below the clearance where the two would meet.
            readonly property bool under: clearancePill.visible && x < clearancePill.x + clearancePill.width
            readonly property real least: (under ? clearancePill.y + clearancePill.height : 0) + Theme.gapTiny
            x: scene.width - width - Theme.gap
            y: Math.max(entrancePill.least, root.entranceY - height / 2)
            text: root.entranceKnown && !root.outside ? root.entranceText : ""
            maximumWidth: scene.width - root.trapX - Theme.gap - Theme.gapWide
        }

        Pill {
            x: scene.width - width - Theme.gap
            readonly property real least: entrancePill.visible ? entrancePill.y + entrancePill.height : 0
            readonly property real most: scene.height - height - Theme.gapTiny
            y: Math.min(most, Math.max(root.canopyY, least) + Theme.gapSmall)
            text: root.canopyKnown && !root.outside ? root.canopyText : ""
            maximumWidth: scene.width - rod.width - 2 * Theme.gap
        }

        Pill {
            id: clearancePill
            x: rod.width + Theme.gapSmall
            y: Theme.gap
            text: root.clearanceText
            caution: root.hidden
            maximumWidth: scene.width - x - Theme.gapSmall
        }

        ClearanceMark {
            visible: root.entranceKnown && root.canopyKnown && !root.hidden
            x: root.trapX - Theme.gapWide - Theme.gapTiny
            y: root.entranceY
            height: root.canopyY - root.entranceY
        }

        RoundCorners {
            ground: root.ground
        }
    }

    Column {
        id: legend
        anchors.bottom: parent.bottom
        width: root.width
        visible: root.outside

        Words {
            width: legend.width
            visible: root.entranceKnown && text.length > 0
            text: root.entranceText
            kind: "small"
            Accessible.ignored: true
        }

        Words {
            width: legend.width
            visible: root.canopyKnown && text.length > 0
            text: root.canopyText
            kind: "small"
            Accessible.ignored: true
        }
    }
}
