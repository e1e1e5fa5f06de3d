// SPDX-License-Identifier: MIT
// One of several, as chips that wrap. Arrow keys move between them, Space or Enter chooses.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property string label
    required property list<string> keys
    required property list<string> labels
    property string chosen: ""
    property bool labelShown: true

    // Room beside the words: the usual, or less where all chips then stand in one row.
    readonly property real wordsTogether: {
        let sum = 0;
        for (let i = 0; i < root.labels.length; ++i)
            sum += Math.max(measure.width(root.labels[i], Theme.typeBody) + 2, Theme.touch - 2 * Theme.gapTiny);
        return sum;
    }
    readonly property real spare: (root.width - root.wordsTogether - (root.labels.length - 1) * flow.spacing) / (2 * root.labels.length)
    readonly property real beside: root.spare < Theme.gapTiny ? Theme.padding : Math.min(Theme.padding, Math.floor(root.spare))

    signal picked(string key)

    implicitWidth: 200
    implicitHeight: flow.y + flow.implicitHeight

    Accessible.role: Accessible.Grouping
    Accessible.name: root.label

    Words {
        id: heading
        width: root.width
        visible: root.labelShown
        text: root.label
        kind: "soft"
        Accessible.ignored: true
    }

    Measure {
        id: measure
    }

    Flow {
        id: flow
        y: root.labelShown ? heading.height + Theme.gapSmall : 0
        width: root.width
        spacing: Theme.gapSmall

        // qmllint disable unqualified
        Each {
            id: chips
            model: root.labels

            PressButton {
                id: chip

                required property string modelData
                required property int index
                readonly property string key: root.keys[chip.index] ?? ""
                readonly property bool isChosen: chip.key.length > 0 && chip.key === root.chosen
                readonly property real wordsWidth: measure.width(chip.modelData, Theme.typeBody)

                function step(by: int): void {
                    const other = chips.itemAt(chip.index + by) as PressButton;
                    if (other)
                        other.forceActiveFocus(Qt.TabFocusReason);
                }

                objectName: "chip_" + chip.key
                width: Math.min(root.width, Math.max(Theme.touch, chip.wordsWidth + 2 * root.beside + 2))
                horizontalPadding: root.beside
                height: Math.max(Theme.touch, implicitContentHeight + topPadding + bottomPadding)
                text: chip.modelData
                corner: Math.min(height / 2, Theme.radius + Theme.gapTiny)
                fill: chip.isChosen ? Theme.act : Theme.card
                fillPressed: chip.isChosen ? Theme.actPressed : Theme.cardPressed
                words: chip.isChosen ? Theme.actInk : Theme.ink
                edgeWidth: chip.isChosen ? 0 : Theme.hairline
                edge: Theme.edge
                font.weight: chip.isChosen ? Font.Bold : Font.Medium
                onClicked: root.picked(chip.key)

                Accessible.name: chip.text
                Accessible.role: Accessible.RadioButton
                Accessible.checkable: true
                Accessible.checked: chip.isChosen

                Keys.onRightPressed: chip.step(1)
                Keys.onDownPressed: chip.step(1)
                Keys.onLeftPressed: chip.step(-1)
                Keys.onUpPressed: chip.step(-1)
            }
        }
        // qmllint enable unqualified
    }
}
