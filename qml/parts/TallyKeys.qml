// SPDX-License-Identifier: MIT
// The keys below the tally: one less, five and ten more, and the number sheet.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property string label
    property bool canTakeAway: true
    readonly property real keyWidth: (root.width - (grid.columns - 1) * grid.spacing) / grid.columns

    signal stepped(int by)
    signal keypadAsked

    implicitWidth: 280
    implicitHeight: grid.implicitHeight

    Measure {
        id: measure
    }

    // Within an item of its own: a positioner takes its width from its children, and these take theirs from it.
    Grid {
        id: grid
        width: root.width
        columns: measure.width("+10", Theme.typeTitle) + 2 * Theme.gapSmall > (root.width - 3 * grid.spacing) / 4 ? 2 : 4
        spacing: Theme.gap

        // qmllint disable unqualified
        Each {
            model: [-1, 5, 10]

            StepKey {
                required property int modelData
                objectName: "tally_" + modelData
                by: modelData
                width: root.keyWidth
                height: Theme.touchWide + Theme.gapTiny
                autoRepeat: false
                // A touch leaves the focus on the pad, so that the next key is one more, not ten.
                focusPolicy: Qt.TabFocus
                enabled: modelData > 0 || root.canTakeAway
                Accessible.name: modelData < 0 ? qsTr("%1: one less").arg(root.label) : qsTr("%1: %2 more").arg(root.label).arg(
                                                     modelData)
                onStepped: by => root.stepped(by)
            }
        }
        // qmllint enable unqualified

        PlainButton {
            objectName: "tally_keypad"
            text: "123"
            width: root.keyWidth
            height: Theme.touchWide + Theme.gapTiny
            horizontalPadding: Theme.gapSmall
            font.pixelSize: Theme.typeTitle
            Accessible.name: qsTr("%1: type the number").arg(root.label)
            onClicked: root.keypadAsked()
        }
    }
}
