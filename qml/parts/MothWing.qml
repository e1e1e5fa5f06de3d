// SPDX-License-Identifier: MIT
// The right half of a spread moth, in units of its picture (200 by 120); the left half is its mirror image.
import QtQuick
import QtQuick.Shapes

Item {
    id: root

    required property string kind
    readonly property bool bertha: root.kind === "bertha-armyworm"
    readonly property bool clover: root.kind === "clover-cutworm"
    readonly property bool armyworm: root.kind === "true-armyworm"
    readonly property string outline: "M 103 42 C 122 31 150 18 176 17 C 183 17 187 20 185 26 C 183 40 178 55 169 68 C 148 70 124 66 106 57 Z"
    readonly property color ground: root.pick("#7C7770", "#B5A899", "#CDA878", "#9C968E")
    readonly property color hind: root.pick("#A79D90", "#CBBFAF", "#C4AE90", "#BBB3A8")

    function pick(forBertha: color, forClover: color, forArmyworm: color, forOther: color): color {
        return root.bertha ? forBertha : root.clover ? forClover : root.armyworm ? forArmyworm : forOther;
    }

    // Small marks spread over the forewing, the same each time.
    function speckles(count: int, seed: int): string {
        let path = "";
        for (let i = 0; i < count; ++i) {
            const a = Math.abs(Math.sin(i * 7.13 + seed) * 9301.7) % 1;
            const b = Math.abs(Math.sin(i * 3.71 + seed * 2) * 7919.3) % 1;
            const x = 112 + a * 62;
            const top = 40 - (x - 103) * 0.3;
            const y = top + 2 + b * (58 + (x - 103) * 0.12 - top - 4);
            path += "M " + x + " " + y + " l " + (1 + a * 2) + " " + (b - 0.5) + " ";
        }
        return path;
    }

    width: 200
    height: 120

    // Hindwing, paler, dusky towards its edge
    Ink {
        fill: root.hind
        stroke: "#5E574E"
        strokeWidth: 0.8
        path: "M 105 56 C 124 66 148 69 164 70 C 168 84 158 101 141 105 C 126 105 112 90 105 72 Z"
    }

    Ink {
        stroke: "#7A7065"
        strokeWidth: 5
        opacity: 0.45
        path: "M 164 73 C 166 86 156 98 141 102 C 136 102 131 100 127 97"
    }

    Ink {
        stroke: "#F3EBDC"
        strokeWidth: 2
        path: "M 165 72 C 168 85 158 101 141 105 C 136 105 131 103 127 100"
    }

    // Forewing
    Ink {
        fill: root.ground
        stroke: "#3F3B36"
        strokeWidth: 1
        path: root.outline
    }

    // Bertha: darker field in the middle, olive and brown towards the tip
    Ink {
        visible: root.bertha
        fill: "#4C4842"
        path: "M 122 34 C 132 30 146 25 158 22 C 156 34 154 50 154 67 C 142 67 130 65 118 61 C 122 52 123 43 122 34 Z"
    }

    Ink {
        visible: root.bertha
        fill: "#6E7048"
        path: "M 169 19 C 174 18 180 19 180 23 C 178 38 173 52 166 65 L 159 66 C 162 52 165 36 169 19 Z"
    }

    Ink {
        visible: root.bertha
        stroke: "#6B4A33"
        strokeWidth: 4
        opacity: 0.8
        path: "M 108 47 C 118 50 128 54 138 56"
    }

    Ink {
        visible: root.clover
        stroke: "#8F8171"
        strokeWidth: 1.4
        path: "M 128 34 l 2 7 l -3 6 l 3 7 l -2 8 M 160 23 l -1 8 l -3 7 l 1 8 l -4 8 l 0 10"
    }

    Ink {
        stroke: root.pick("#26231F", "#7E7162", "#9A7A50", "#7F7971")
        strokeWidth: root.bertha ? 1.1 : 0.9
        opacity: 0.8
        path: root.speckles(root.bertha ? 34 : 50, root.bertha ? 3 : 8)
    }

    // Bertha and clover: round spot and kidney spot; white and plain in the one, hardly there in the other
    Ink {
        visible: root.bertha || root.clover
        fill: root.bertha ? "#8E877C" : "transparent"
        stroke: root.bertha ? "#D8D2C4" : "#85786A"
        strokeWidth: 0.9
        path: "M 128 42 c 0 -4 7 -5 7 0 c 0 5 -7 5 -7 0 Z"
    }

    Ink {
        visible: root.bertha || root.clover
        fill: root.bertha ? "#F7F4EC" : "#A39686"
        stroke: root.bertha ? "#2A2723" : "#85786A"
        strokeWidth: 0.8
        path: "M 144 32 C 149 29 153 33 151 38 C 150 41 152 44 150 47 C 147 51 142 48 143 43 C 144 39 141 35 144 32 Z"
    }

    Ink {
        visible: root.bertha
        stroke: "#9A9384"
        strokeWidth: 1.4
        path: "M 147.5 35.5 C 148.5 38 146 41 147 45"
    }

    // The line near the tip: white and wavy with a W in bertha, faint in clover
    Ink {
        visible: root.bertha || root.clover
        stroke: root.bertha ? "#F4F0E2" : "#DDD3C4"
        strokeWidth: root.bertha ? 1.9 : 1.2
        path: "M 177 18 C 174 23 178 27 174 31 L 170 36 L 176 39 L 169 45 L 173 49 C 168 53 169 58 164 67"
    }

    // Armyworm: one white pinhead in a soft dark smear, a slanting dark dash from the tip
    Ink {
        visible: root.armyworm
        stroke: "#8A673F"
        strokeWidth: 1.4
        opacity: 0.8
        path: "M 184 19 C 176 29 168 38 160 45"
    }

    Ink {
        visible: root.armyworm
        stroke: "#5A452C"
        strokeWidth: 1.6
        strokeStyle: ShapePath.DashLine
        dashes: [0.4, 2.6]
        path: "M 166 28 C 162 41 160 54 158 67"
    }

    Ink {
        visible: root.armyworm
        stroke: "#9C7446"
        strokeWidth: 5
        opacity: 0.6
        path: "M 136 45 L 150 42"
    }

    Ink {
        visible: root.armyworm
        fill: "#FFFFFF"
        stroke: "#5A452C"
        strokeWidth: 0.5
        path: "M 145 43.5 a 2 2 0 1 0 4 0 a 2 2 0 1 0 -4 0 Z"
    }

    // Worn: bare patches where the scales are gone
    Ink {
        visible: !root.bertha && !root.clover && !root.armyworm
        fill: "#CFC9BF"
        opacity: 0.8
        path: "M 132 34 c 8 -6 18 -4 16 4 c -2 8 -12 6 -16 12 c -6 2 -6 -12 0 -16 Z M 162 42 c 6 -4 10 0 8 8 c -2 8 -10 10 -12 4 c -1 -4 0 -9 4 -12 Z"
    }

    // Fringe along the outer edge
    Ink {
        stroke: root.pick("#E9E7E2", "#C9BEB0", "#B8935F", "#AAA49B")
        strokeWidth: root.bertha ? 3.4 : 2
        path: "M 186 24 C 184 40 179 56 170 68.5"
    }

    Ink {
        visible: root.bertha
        stroke: "#5B5750"
        strokeWidth: 3.4
        strokeStyle: ShapePath.DashLine
        dashes: [0.25, 1.9]
        path: "M 186 24 C 184 40 179 56 170 68.5"
    }
}
