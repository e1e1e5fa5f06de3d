// SPDX-License-Identifier: MIT
// A trap that is no bucket, with its lure: "delta", "wing", "cone" or "jug". Stands in TrapPicture's units, 160 by 196.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property string kind
    property real pen: 1 // lines this many times as thick, where the sketch is drawn small
    // Where its moths go in, and where its lure hangs.
    readonly property point entrance: ({ wing: Qt.point(80, 104), cone: Qt.point(80, 168), jug: Qt.point(80, 100) })[root.kind] ?? Qt.point(70, 120)
    readonly property point lure: ({ wing: Qt.point(88, 82), cone: Qt.point(88, 156), jug: Qt.point(88, 100) })[root.kind] ?? Qt.point(78, 98)

    // Delta: a roof of three sides, open at its ends; the sticky liner lies on its floor
    Item {
        visible: root.kind === "delta"

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 91 42 Q 90 18 104 14"
        }

        Ink {
            fill: Theme.trapGreen
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 68 50 L 114 34 L 156 132 L 122 152 Z"
        }

        Ink {
            fill: Theme.card
            stroke: Theme.trapGreenDark
            strokeWidth: 3 * root.pen
            path: "M 68 50 L 14 152 L 122 152 Z"
        }

        Ink {
            fill: Theme.strip
            stroke: Theme.ink
            strokeWidth: root.pen
            path: "M 22 148 L 32 134 L 105 134 L 114 148 Z"
        }

        Ink {
            fill: Theme.ink
            path: "M 42 141 l 6 -3 l 5 4 l -6 2 Z M 66 143 l 5 -4 l 6 3 l -6 2 Z M 88 140 l 6 -3 l 4 4 l -5 2 Z"
        }

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 68 54 V 90"
        }
    }

    // Wing: a roof over a sticky tray, open all around
    Item {
        visible: root.kind === "wing"

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 80 52 V 20 M 34 82 V 122 M 126 82 V 122"
        }

        Ink {
            fill: Theme.trapBucket
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 6 120 L 26 136 L 134 136 L 154 120 L 154 130 L 136 148 L 24 148 L 6 130 Z"
        }

        Ink {
            fill: Theme.strip
            stroke: Theme.ink
            strokeWidth: root.pen
            path: "M 28 131 L 132 131 L 132 136 L 28 136 Z"
        }

        Ink {
            fill: Theme.ink
            path: "M 46 131 l 6 -4 l 6 4 Z M 86 131 l 6 -4 l 6 4 Z M 108 131 l 5 -4 l 6 4 Z"
        }

        Ink {
            fill: Theme.trapGreen
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 4 86 L 80 50 L 156 86 L 150 92 L 80 62 L 10 92 Z"
        }

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 80 60 V 70"
        }
    }

    // Cone: a wide net over the lure, and the can on top that they climb into
    Item {
        visible: root.kind === "cone"

        Ink {
            fill: Theme.trapGreen
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 64 22 Q 64 14 80 14 Q 96 14 96 22 L 96 56 L 64 56 Z"
        }

        Ink {
            fill: Theme.card
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 66 56 L 94 56 L 142 156 Q 80 172 18 156 Z"
        }

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: root.pen
            path: "M 61 68 Q 80 71 99 68 M 53 84 Q 80 89 107 84 M 45 101 Q 80 108 115 101 M 36 119 Q 80 129 124 119 M 27 138 Q 80 151 133 138 M 73 56 L 48 162 M 87 56 L 112 162 M 80 56 V 165"
        }

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: 4 * root.pen
            path: "M 18 156 Q 80 174 142 156"
        }

        Ink {
            stroke: Theme.ink
            strokeWidth: 2.2 * root.pen
            path: "M 48 192 V 176 M 43 182 L 48 176 L 53 182 M 112 192 V 176 M 107 182 L 112 176 L 117 182"
        }
    }

    // Jug: windows cut into its sides, liquid at the bottom
    Item {
        visible: root.kind === "jug"

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: 7 * root.pen
            path: "M 118 72 Q 146 72 144 100 Q 143 118 122 122"
        }

        Ink {
            fill: Theme.trapGreen
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 66 16 L 94 16 L 94 30 L 66 30 Z"
        }

        Ink {
            fill: Theme.card
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 68 30 L 92 30 L 92 42 Q 124 52 124 78 L 124 178 Q 124 184 118 184 L 42 184 Q 36 184 36 178 L 36 78 Q 36 52 68 42 Z"
        }

        Ink {
            fill: Theme.trapBucket
            path: "M 38 152 L 122 152 L 122 177 Q 122 182 117 182 L 43 182 Q 38 182 38 177 Z"
        }

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 38 152 H 122"
        }

        Ink {
            fill: Theme.paper
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 54 78 L 106 78 L 106 126 L 54 126 Z"
        }

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: 1.5 * root.pen
            path: "M 80 30 V 86"
        }
    }

    Ink {
        x: root.lure.x - 88
        y: root.lure.y - 92
        fill: Theme.lure
        stroke: Theme.ink
        strokeWidth: root.pen
        path: "M 74 82 L 86 82 L 86 86 L 84.5 86 L 84 100 Q 80 103 76 100 L 75.5 86 L 74 86 Z"
    }
}
