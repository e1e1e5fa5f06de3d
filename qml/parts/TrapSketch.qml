// SPDX-License-Identifier: MIT
// A trap that is no bucket, from outside, with its lure: "delta", "wing", "cone" or "jug". Stands in TrapPicture's units.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property string kind

    function body(): string {
        switch (root.kind) {
        case "wing":
            return "M 12 84 L 80 56 L 148 84 L 80 76 Z M 22 126 L 138 126 L 148 134 L 12 134 Z";
        case "cone":
            return "M 80 20 L 92 52 L 132 160 L 28 160 L 68 52 Z";
        case "jug":
            return "M 64 22 L 96 22 L 96 42 L 124 66 L 124 172 L 36 172 L 36 66 L 64 42 Z";
        default:
            return "M 80 30 L 20 140 L 140 140 Z";
        }
    }

    function lines(): string {
        switch (root.kind) {
        case "wing":
            return "M 34 90 V 126 M 126 90 V 126 M 80 56 V 40";
        case "cone":
            return "M 68 52 H 92 M 60 74 H 100 M 52 96 H 108 M 44 118 H 116 M 36 140 H 124 M 80 52 V 160";
        case "jug":
            return "M 52 112 H 108 V 144 H 52 Z M 70 32 H 90";
        default:
            return "M 80 44 L 38 131 L 122 131 Z";
        }
    }

    Ink {
        fill: Theme.card
        stroke: Theme.trapGreenDark
        strokeWidth: 3
        path: root.body()
    }

    Ink {
        stroke: Theme.trapGreenDark
        strokeWidth: 1.5
        path: root.lines()
    }

    Ink {
        fill: Theme.lure
        stroke: Theme.ink
        strokeWidth: 1
        path: "M 75 84 L 85 84 L 84 100 Q 80 103 76 100 Z"
    }
}
