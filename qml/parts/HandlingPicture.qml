// SPDX-License-Identifier: MIT
// How the lure is handled: never with bare fingers; with forceps, or tipped from its packet, into the basket.
import QtQuick
import Duskrow.Theme

Flow {
    id: root

    required property string noText
    required property string yesText
    readonly property bool beside: Theme.textScale < 1.5
    readonly property real panelWidth: root.beside ? (root.width - Theme.gap) / 2 : root.width

    spacing: Theme.gap

    HandlingPanel {
        width: root.panelWidth
        text: root.noText

        // A bare hand, one finger pointing at the lure
        Ink {
            fill: Theme.skin
            stroke: Theme.ink
            strokeWidth: 1.2
            path: "M 2 84 C 6 76 14 74 20 72 L 47 57 C 54 53 63 52 66 57 C 69 62 64 69 57 73 L 44 81 C 50 83 50 90 44 92 C 47 97 43 102 37 102 C 38 107 32 111 26 109 C 14 112 4 108 1 100 C -1 94 0 88 2 84 Z"
        }

        Ink {
            stroke: Theme.ink
            strokeWidth: 1
            path: "M 44 81 L 31 85 M 44 92 L 30 94 M 37 102 L 28 102 M 35 66 q 4 3 5 8"
        }

        Ink {
            fill: Theme.card
            stroke: Theme.ink
            strokeWidth: 0.8
            path: "M 55 57.5 C 60 55 64 55 65 58 C 66 61 63 64 59 66.5 C 56 65 54 60 55 57.5 Z"
        }

        LureShape {
            x: 66
            y: 38
        }

        Ink {
            fill: Theme.inkError
            path: "M 104 92 a 14 14 0 1 0 28 0 a 14 14 0 1 0 -28 0 Z"
        }

        Ink {
            stroke: Theme.card
            strokeWidth: 3.4
            path: "M 113 87 L 123 97 M 123 87 L 113 97"
        }
    }

    HandlingPanel {
        width: root.panelWidth
        text: root.yesText

        // Forceps holding the lure over the basket
        Ink {
            stroke: Theme.steel
            strokeWidth: 4
            path: "M 2 8 C 24 14 46 24 63 42 M 2 8 C 18 24 40 42 60 54"
        }

        LureShape {
            x: 58
            y: 36
        }

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: 2
            path: "M 50 76 L 55 108 Q 70 114 85 108 L 90 76 M 60 78 L 63 110 M 80 78 L 77 110 M 52 88 H 88 M 54 99 H 86"
        }

        Ink {
            stroke: Theme.trapGreenDark
            strokeWidth: 4
            path: "M 44 76 H 96"
        }

        Ink {
            fill: Theme.ink
            path: "M 104 92 a 14 14 0 1 0 28 0 a 14 14 0 1 0 -28 0 Z"
        }

        Ink {
            stroke: Theme.card
            strokeWidth: 3.4
            path: "M 111 92.5 L 116 98 L 125 87"
        }
    }
}
