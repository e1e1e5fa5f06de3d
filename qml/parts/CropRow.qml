// SPDX-License-Identifier: MIT
// A row of canola plants of a given height, leafy, flowering or podding. The same seed draws the same plants.
import QtQuick
import QtQuick.Shapes
import Duskrow.Theme

Item {
    id: root

    required property real plantHeight
    required property string stage
    required property int seed
    property bool far: false
    property real openAt: -1
    readonly property real apart: root.far ? 9 : 15
    readonly property int count: Math.ceil(root.width / root.apart) + 1
    readonly property bool leafy: root.stage === "leafy"
    readonly property bool flowering: root.stage === "flowering"
    readonly property bool podding: root.stage === "podding"

    // A number from 0 to 1 that is the same for the same plant each time.
    function chance(plant: int, which: int): real {
        const wave = Math.sin(plant * 12.9898 + which * 78.233 + root.seed * 37.719) * 43758.5453;
        return wave - Math.floor(wave);
    }

    function footOf(plant: int): real {
        return plant * root.apart + (root.chance(plant, 1) - 0.5) * root.apart * 0.7;
    }

    function tallOf(plant: int): real {
        return root.plantHeight * (0.86 + 0.14 * root.chance(plant, 2));
    }

    function grows(plant: int): bool {
        return root.openAt < 0 || Math.abs(root.footOf(plant) - root.openAt) > 24;
    }

    function at(plant: int, share: real): point {
        const lean = (root.chance(plant, 3) - 0.5) * 10;
        return Qt.point(root.footOf(plant) + lean * share * share, root.height - root.tallOf(plant) * share);
    }

    function pair(at: point): string {
        return at.x + " " + at.y + " ";
    }

    function stems(): string {
        let path = "";
        for (let i = 0; i < root.count; ++i) {
            if (!root.grows(i))
                continue;
            const middle = root.at(i, 0.5);
            const top = root.at(i, root.flowering ? 0.97 : 1);
            path += "M " + root.footOf(i) + " " + root.height + " Q " + root.pair(middle) + root.pair(top);
        }
        return path || "M 0 0";
    }

    function leaf(x: real, y: real, reach: real, drop: real): string {
        const out = " q " + reach * 0.5 + " " + (-drop * 1.3) + " " + reach + " " + (-drop * 0.2);
        const home = " q " + (-reach * 0.5) + " " + drop * 0.9 + " " + (-reach) + " " + drop * 0.2;
        return "M " + x + " " + y + out + home + " z ";
    }

    function leaves(): string {
        let path = "";
        for (let i = 0; i < root.count; ++i) {
            if (!root.grows(i))
                continue;
            for (let k = 0; k < (root.leafy ? 6 : 4); ++k) {
                const share = root.leafy ? 0.25 + k * 0.14 : 0.12 + k * 0.15;
                const from = root.at(i, share);
                const side = (k + i) % 2 === 0 ? 1 : -1;
                const reach = side * (11 + 7 * root.chance(i, 10 + k)) * (root.leafy ? 1.2 : 1 - share * 0.5);
                path += root.leaf(from.x, from.y, reach, 9);
            }
        }
        return path || "M 0 0";
    }

    function dot(x: real, y: real, r: real): string {
        const half = " a " + r + " " + r + " 0 1 0 ";
        return "M " + (x - r) + " " + y + half + 2 * r + " 0" + half + (-2 * r) + " 0 z ";
    }

    function flowers(): string {
        let path = "";
        for (let i = 0; i < root.count && root.flowering; ++i) {
            if (!root.grows(i))
                continue;
            for (let k = 0; k < 9; ++k) {
                const on = root.at(i, 1 - k * 0.014);
                const off = (k % 2 === 0 ? 1 : -1) * (1.5 + k * 0.7) * (0.6 + 0.6 * root.chance(i, 20 + k));
                path += root.dot(on.x + off, on.y + k * 0.8 + 2, 2.4 + 1.2 * root.chance(i, 40 + k));
            }
        }
        return path || "M 0 0";
    }

    function pods(): string {
        let path = "";
        for (let i = 0; i < root.count && root.podding; ++i) {
            if (!root.grows(i))
                continue;
            for (let k = 0; k < 9; ++k) {
                const from = root.at(i, 0.97 - k * 0.05);
                const side = k % 2 === 0 ? 1 : -1;
                path += "M " + from.x + " " + from.y + " q " + side * 5 + " -1 " + side * 9 + " -9 ";
            }
        }
        return path || "M 0 0";
    }

    Shape {
        anchors.fill: parent
        opacity: root.far ? 0.75 : 1

        ShapePath {
            strokeColor: root.far ? Theme.stemDark : Theme.stem
            strokeWidth: root.far ? 2 : 3
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap

            PathSvg {
                path: root.stems()
            }
        }

        ShapePath {
            strokeWidth: -1
            fillColor: root.far ? Theme.stemDark : Theme.stem

            PathSvg {
                path: root.leaves()
            }
        }

        ShapePath {
            strokeColor: Theme.pod
            strokeWidth: 2.6
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap

            PathSvg {
                path: root.pods()
            }
        }

        ShapePath {
            strokeWidth: -1
            fillColor: Theme.flower
            fillRule: ShapePath.WindingFill

            PathSvg {
                path: root.flowers()
            }
        }
    }
}
