// SPDX-License-Identifier: MIT
// The keys below the tally: one less, five and ten more, and the number sheet.
import QtQuick
import Duskrow.Theme

Grid {
    id: root

    required property string label
    property bool canTakeAway: true
    readonly property real keyNeed: measure.width("+10", Theme.typeTitle) + 2 * Theme.gapSmall
    readonly property real keyWidth: (root.width - (root.columns - 1) * root.spacing) / root.columns

    signal stepped(int by)
    signal keypadAsked

    function keyName(by: int): string {
        return by < 0 ? qsTr("%1: one less").arg(root.label) : qsTr("%1: %2 more").arg(root.label).arg(by);
    }

    columns: root.keyNeed > (root.width - 3 * root.spacing) / 4 ? 2 : 4
    spacing: Theme.gap

    Measure {
        id: measure
    }

    // qmllint disable unqualified
    Repeater {
        model: [-1, 5, 10]

        StepKey {
            required property int modelData
            objectName: "tally_" + modelData
            by: modelData
            width: root.keyWidth
            height: Theme.touchWide + Theme.gapTiny
            autoRepeat: false
            enabled: modelData > 0 || root.canTakeAway
            Accessible.name: root.keyName(modelData)
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
