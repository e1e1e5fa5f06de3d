// SPDX-License-Identifier: MIT
// How far along we are: a few bars, each with its word; in very large type one sentence instead of the words.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property list<string> labels
    property int current: 0
    readonly property int steps: Math.max(1, root.labels.length)
    readonly property real barWidth: (root.width - (root.steps - 1) * Theme.gapTiny) / root.steps
    readonly property bool fits: measure.widest(root.labels, Theme.typeSmall) <= root.barWidth
    readonly property string step: root.labels[root.current] ?? ""
    readonly property string sentence: qsTr("Step %1 of %2: %3").arg(root.current + 1).arg(root.steps).arg(root.step)

    implicitWidth: 200
    implicitHeight: Theme.bar + Theme.gapSmall + spoken.implicitHeight

    Accessible.role: Accessible.StaticText
    Accessible.name: root.sentence

    Measure {
        id: measure
    }

    Row {
        spacing: Theme.gapTiny

        // qmllint disable unqualified
        Each {
            model: root.labels

            Item {
                id: step
                required property string modelData
                required property int index
                readonly property bool reached: step.index <= root.current
                width: root.barWidth
                height: root.height

                Rectangle {
                    width: parent.width
                    height: Theme.bar
                    radius: Theme.bar / 2
                    color: step.reached ? Theme.ink : Theme.line
                }

                Words {
                    y: Theme.bar + Theme.gapSmall
                    visible: root.fits
                    text: step.modelData
                    kind: step.index === root.current ? "small" : "soft"
                    font.weight: step.index === root.current ? Font.Bold : Font.Normal
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
        // qmllint enable unqualified
    }

    Words {
        id: spoken
        y: Theme.bar + Theme.gapSmall
        width: root.width
        visible: !root.fits
        kind: "small"
        text: root.fits ? root.labels[0] ?? "" : root.sentence
        font.weight: Font.Bold
        Accessible.ignored: true
    }
}
