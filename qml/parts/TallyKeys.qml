// SPDX-License-Identifier: MIT
// The keys below the tally: one less, five and ten more, and the number sheet.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

GridLayout {
    id: root

    required property string label
    property bool canTakeAway: true

    signal stepped(int by)
    signal keypadAsked

    columns: measure.width("+10", Theme.typeTitle) + 4 * Theme.gapSmall > (root.width - 3 * Theme.gap) / 4 ? 2 : 4
    columnSpacing: Theme.gap
    rowSpacing: Theme.gap

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
            implicitHeight: Theme.touchWide + Theme.gapTiny
            autoRepeat: false
            enabled: modelData > 0 || root.canTakeAway
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Accessible.name: modelData < 0 ? qsTr("%1: one less").arg(root.label) : qsTr("%1: %2 more").arg(root.label).arg(
                                                 modelData)
            onStepped: by => root.stepped(by)
        }
    }
    // qmllint enable unqualified

    PlainButton {
        objectName: "tally_keypad"
        text: "123"
        implicitHeight: Theme.touchWide + Theme.gapTiny
        horizontalPadding: Theme.gapSmall
        font.pixelSize: Theme.typeTitle
        Layout.fillWidth: true
        Layout.preferredWidth: 1
        Accessible.name: qsTr("%1: type the number").arg(root.label)
        onClicked: root.keypadAsked()
    }
}
