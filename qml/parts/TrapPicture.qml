// SPDX-License-Identifier: MIT
// The bucket trap cut open, with a label that points at the highlight: "lure", "strip", "entrance", "bucket"; other
// kinds of trap ("delta", "wing", "cone", "jug") as they look from outside.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property string description
    property string kind: "bucket"
    readonly property bool bucket: root.kind === "bucket"
    property string highlight: ""
    property string label: ""
    readonly property bool labelled: root.label.length > 0 && root.highlight.length > 0
    // In large type the label stands below, and the part that is not pale is the one meant.
    readonly property bool beside: root.labelled && Theme.textScale < 1.4
    readonly property real labelY: drawing.place(0, root.targetOf(root.highlight).y).y

    function targetOf(part: string): point {
        if (!root.bucket)
            return sketch.lure;
        switch (part) {
        case "lure":
            return Qt.point(88, 47);
        case "entrance":
            return Qt.point(118, 58);
        case "strip":
            return Qt.point(104, 170);
        default:
            return Qt.point(124, 140);
        }
    }

    function shade(part: string): real {
        return root.highlight.length === 0 || root.highlight === part ? 1 : 0.35;
    }

    implicitWidth: 320
    implicitHeight: root.labelled ? Math.max(drawing.height, words.y + words.implicitHeight) : drawing.height

    Accessible.role: Accessible.Graphic
    Accessible.name: root.description

    Drawing {
        id: drawing
        x: root.beside ? 0 : (root.width - width) / 2
        width: Math.min(root.beside ? root.width * 0.56 : root.width, 240)
        height: implicitHeight
        description: root.description
        unitsWide: 160
        unitsHigh: 196
        Accessible.ignored: true

        TrapSketch {
            id: sketch
            visible: !root.bucket
            kind: root.kind
        }

        Item {
            visible: root.bucket

            // Lid with its three posts
            Ink {
                opacity: root.shade("entrance")
                stroke: Theme.trapGreenDark
                strokeWidth: 4
                path: "M 44 52 V 84 M 116 52 V 84"
            }

            Ink {
                opacity: root.shade("lid")
                fill: Theme.trapGreen
                stroke: Theme.trapGreenDark
                strokeWidth: 1.5
                path: "M 22 52 C 22 34 50 26 68 25 L 92 25 C 110 26 138 34 138 52 L 92 52 L 92 46 L 68 46 L 68 52 Z"
            }

            // Basket and its cap, the lure inside
            Ink {
                opacity: root.shade("lure")
                fill: Theme.trapGreenDark
                path: "M 66 24 L 66 14 Q 66 10 70 10 L 90 10 Q 94 10 94 14 L 94 24 Z"
            }

            Ink {
                opacity: root.shade("lure")
                fill: Theme.card
                stroke: Theme.trapGreenDark
                strokeWidth: 1.5
                path: "M 69 25 L 71 60 Q 80 65 89 60 L 91 25 Z"
            }

            Ink {
                opacity: root.shade("lure")
                stroke: Theme.trapGreenDark
                strokeWidth: 1
                path: "M 75 26 L 76 62 M 85 26 L 84 62 M 70 36 H 90 M 70 52 H 90"
            }

            Ink {
                opacity: root.shade("lure")
                fill: Theme.lure
                stroke: Theme.ink
                strokeWidth: 1
                path: "M 74 40 L 86 40 L 86 44 L 84.5 44 L 84 56 Q 80 59 76 56 L 75.5 44 L 74 44 Z"
            }

            // Funnel, cut
            Ink {
                opacity: root.shade("funnel")
                fill: Theme.trapGreen
                stroke: Theme.trapGreenDark
                strokeWidth: 1.5
                path: "M 22 84 L 138 84 L 138 92 L 130 92 L 96 120 L 96 132 L 90 132 L 90 116 L 118 92 L 42 92 L 70 116 L 70 132 L 64 132 L 64 120 L 30 92 L 22 92 Z"
            }

            // Bucket, cut: walls and floor
            Ink {
                opacity: root.shade("bucket")
                fill: Theme.trapBucket
                stroke: Theme.trapGreenDark
                strokeWidth: 1.5
                path: "M 28 93 L 34 93 L 40 176 Q 40 180 44 180 L 116 180 Q 120 180 120 176 L 126 93 L 132 93 L 126 180 Q 125 187 118 187 L 42 187 Q 35 187 34 180 Z"
            }

            // Strip on the floor
            Ink {
                opacity: root.shade("strip")
                fill: Theme.strip
                stroke: Theme.ink
                strokeWidth: 1.2
                path: "M 62 166 L 104 166 Q 106 166 106 168 L 106 177 Q 106 179 104 179 L 62 179 Q 60 179 60 177 L 60 168 Q 60 166 62 166 Z"
            }

            Ink {
                opacity: root.shade("strip")
                stroke: Theme.ink
                strokeWidth: 1
                path: "M 66 170 V 175 M 72 170 V 175 M 78 170 V 175 M 84 170 V 175 M 90 170 V 175 M 96 170 V 175 M 101 170 V 175"
            }

            // Ways in
            Ink {
                visible: root.highlight === "entrance"
                stroke: Theme.ink
                strokeWidth: 2.2
                path: "M 8 68 H 34 M 28 63 L 34 68 L 28 73 M 152 68 H 126 M 132 63 L 126 68 L 132 73"
            }
        }
    }

    Rectangle {
        visible: root.beside
        x: drawing.place(root.targetOf(root.highlight).x, 0).x
        y: root.labelY - 1
        width: words.x - x - Theme.gapTiny
        height: 2
        color: Theme.ink
    }

    Words {
        id: words
        visible: root.labelled
        x: root.beside ? drawing.width + Theme.gap : 0
        readonly property real level: Math.max(0, Math.min(drawing.height - height, root.labelY - 10))
        y: root.beside ? level : drawing.height + Theme.gapSmall
        width: root.width - x
        horizontalAlignment: root.beside ? Text.AlignLeft : Text.AlignHCenter
        text: root.label
        kind: "small"
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }
}
