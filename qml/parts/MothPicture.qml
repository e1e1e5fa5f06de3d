// SPDX-License-Identifier: MIT
// A spread moth with numbered marks to look for; what each number means stands below in the caller's words.
// kind: "bertha-armyworm", "clover-cutworm", "true-armyworm" or "unknown" (worn, scales rubbed off).
import QtQuick
import Duskrow.Theme

Column {
    id: root

    required property string kind
    required property string description
    property list<string> labels
    // In the order of the labels: what each points at, in units of the picture.
    readonly property list<point> berthaMarks: [Qt.point(147, 33), Qt.point(173, 48), Qt.point(173, 65)]
    readonly property list<point> cloverMarks: [Qt.point(122, 48), Qt.point(171, 50), Qt.point(150, 86)]
    readonly property list<point> armywormMarks: [Qt.point(147, 42), Qt.point(166, 62), Qt.point(150, 86)]
    readonly property list<point> otherMarks: [Qt.point(140, 42), Qt.point(166, 48), Qt.point(173, 65)]
    readonly property list<point> numbersAt: [Qt.point(132, 9), Qt.point(193, 66), Qt.point(178, 90)]
    readonly property list<point> marksAt: root.marksOf(root.kind)
    readonly property int marks: Math.min(root.labels.length, root.numbersAt.length)

    function marksOf(kind: string): list<point> {
        switch (kind) {
        case "bertha-armyworm":
            return root.berthaMarks;
        case "clover-cutworm":
            return root.cloverMarks;
        case "true-armyworm":
            return root.armywormMarks;
        default:
            return root.otherMarks;
        }
    }

    function leader(index: int): string {
        const from = root.numbersAt[index];
        const to = root.marksAt[index];
        return "M " + from.x + " " + from.y + " L " + to.x + " " + to.y;
    }

    spacing: Theme.gapSmall

    Drawing {
        id: drawing
        width: Math.min(root.width, 420)
        anchors.horizontalCenter: parent.horizontalCenter
        height: implicitHeight
        description: root.description
        unitsHigh: 112

        MothWing {
            kind: root.kind
        }

        MothWing {
            kind: root.kind

            transform: Scale {
                origin.x: 100
                xScale: -1
            }
        }

        MothBody {
            kind: root.kind
        }

        // qmllint disable unqualified
        Each {
            model: root.marks

            Ink {
                required property int index
                stroke: Theme.ink
                strokeWidth: 0.9
                path: root.leader(index)
            }
        }

        Each {
            model: root.marks

            NumberMark {
                required property int index
                number: index + 1
                x: root.numbersAt[index].x - width / 2
                y: root.numbersAt[index].y - height / 2
                scale: 1 / drawing.factor
            }
        }
        // qmllint enable unqualified
    }

    // qmllint disable unqualified
    Each {
        model: root.labels

        Item {
            id: row

            required property string modelData
            required property int index
            width: root.width
            height: Math.max(mark.height, words.height)

            NumberMark {
                id: mark
                number: row.index + 1
                visible: row.index < root.marks
            }

            Words {
                id: words
                x: mark.width + Theme.gapSmall
                y: Math.max(0, (mark.height - font.pixelSize * 1.3) / 2)
                width: row.width - x
                text: row.modelData
                kind: "small"
            }
        }
    }
    // qmllint enable unqualified
}
