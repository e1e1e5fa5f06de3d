// SPDX-License-Identifier: MIT
// A heavy catch: one or more parts are counted, the whole is measured, and the rest is estimated with its range.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property HeavyCatchViewModel model
    required property string many // what is counted: "moths"

    subtitle: qsTr("A heavy catch, from a counted part")

    Words {
        text: qsTr("Take out the bees and other insects. Drain and dry the %1, mix them, then measure the whole and count a part of it.").arg(root.many)
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "method"
        label: qsTr("Measured by")
        keys: ["volume", "weight"]
        labels: [qsTr("volume, ml"), qsTr("weight, g")]
        chosen: root.model.method
        onPicked: key => root.model.method = key
        Layout.fillWidth: true
    }

    FieldNumber {
        objectName: "whole"
        label: qsTr("The whole catch, the counted parts included")
        known: root.model.wholeKnown
        value: root.model.whole
        unit: root.model.unit
        to: 100000
        step: 10
        decimals: 1
        onEdited: amount => root.model.setWhole(amount)
        onCleared: root.model.clearWhole()
        Layout.fillWidth: true
    }

    // qmllint disable unqualified
    Each {
        model: root.model.parts

        CatchPartCard {
            required property int index
            required property bool countedKnown
            required property real counted
            required property bool amountKnown
            required property real amount
            objectName: "part_" + index
            number: index + 1
            many: root.many
            unit: root.model.unit
            mothsKnown: countedKnown
            moths: counted
            sizeKnown: amountKnown
            size: amount
            canRemove: root.model.parts.rowCount() > 1
            onMothsEdited: moths => root.model.parts.setCounted(index, moths)
            onMothsCleared: root.model.parts.clearCounted(index)
            onSizeEdited: size => root.model.parts.setAmount(index, size)
            onSizeCleared: root.model.parts.clearAmount(index)
            onRemoved: root.model.parts.remove(index)
            Layout.fillWidth: true
        }
    }
    // qmllint enable unqualified

    PlainButton {
        objectName: "addPart"
        text: qsTr("Count another part")
        enabled: root.model.canAddPart
        Layout.fillWidth: true
        onClicked: root.model.addPart()
    }

    NoticeBar {
        objectName: "problem"
        visible: root.model.problem.length > 0
        kind: "caution"
        text: root.model.problem
        Layout.fillWidth: true
    }

    BigNumber {
        objectName: "estimate"
        value: root.model.shown
        caption: (root.model.estimate.length > 0 ? qsTr("%1 in the whole catch, an estimate") : qsTr(
                                                      "%1: the whole and one part are needed")).arg(root.many)
        lines: root.model.range.length > 0 ? [root.model.range] : []
        Layout.fillWidth: true
    }

    Words {
        objectName: "why"
        visible: text.length > 0
        text: root.model.why
        kind: "soft"
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "useEstimate"
            text: root.model.estimate.length > 0 ? qsTr("Use it: %1").arg(root.model.estimate) : qsTr("Use the estimate")
            enabled: root.model.estimate.length > 0
            Layout.fillWidth: true
            onClicked: {
                if (root.model.use())
                    root.back();
            }
        }
    ]
}
