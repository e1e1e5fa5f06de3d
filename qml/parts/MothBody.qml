// SPDX-License-Identifier: MIT
// Feelers, head, furry thorax and ringed abdomen of the spread moth, in units of its picture.
import QtQuick

Item {
    id: root

    required property string kind
    readonly property color fur: root.furOf(root.kind)
    readonly property color belly: root.kind === "true-armyworm" ? "#C4A77F" : "#A59A8C"

    function furOf(kind: string): color {
        switch (kind) {
        case "bertha-armyworm":
            return "#6A655D";
        case "clover-cutworm":
            return "#A39686";
        case "true-armyworm":
            return "#B98F5E";
        default:
            return "#8C867E";
        }
    }

    width: 200
    height: 120

    Ink {
        stroke: "#4A443C"
        strokeWidth: 0.9
        path: "M 98 31 C 92 20 84 12 74 8 M 102 31 C 108 20 116 12 126 8"
    }

    Ink {
        fill: root.belly
        stroke: "#5E574E"
        strokeWidth: 0.8
        path: "M 93 54 C 91 72 93 92 100 101 C 107 92 109 72 107 54 Z"
    }

    Ink {
        stroke: "#6F665B"
        strokeWidth: 0.9
        path: "M 92.6 66 Q 100 69 107.4 66 M 93 74 Q 100 77 107 74 M 94 82 Q 100 85 106 82 M 95.8 90 Q 100 92.4 104.2 90"
    }

    Ink {
        fill: root.fur
        stroke: "#4A443C"
        strokeWidth: 0.8
        path: "M 100 33 C 108 33 112 40 111 48 C 110 56 105 60 100 60 C 95 60 90 56 89 48 C 88 40 92 33 100 33 Z"
    }

    Ink {
        stroke: "#3F3A33"
        strokeWidth: 0.7
        opacity: 0.7
        path: "M 95 42 l -2 6 M 98 40 l -1 8 M 102 40 l 1 8 M 105 42 l 2 6 M 97 51 l -1 5 M 103 51 l 1 5"
    }

    Ink {
        fill: root.fur
        stroke: "#4A443C"
        strokeWidth: 0.8
        path: "M 95 32 C 95 27 105 27 105 32 C 105 36 95 36 95 32 Z"
    }

    Ink {
        fill: "#24211D"
        path: "M 94.2 31.5 a 1.4 1.4 0 1 0 2.8 0 a 1.4 1.4 0 1 0 -2.8 0 Z M 103 31.5 a 1.4 1.4 0 1 0 2.8 0 a 1.4 1.4 0 1 0 -2.8 0 Z"
    }
}
