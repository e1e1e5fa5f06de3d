// SPDX-License-Identifier: MIT
// Set-up: the entrance against the canopy, drawn to scale.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

SetupPage {
    id: root

    readonly property SetupStake stake: root.model.stake

    valid: entrance.valid && canopy.valid

    StakePicture {
        objectName: "stakePicture"
        kind: root.model.trap.trapShape
        description: root.stake.description
        entranceMm: root.stake.entranceMm
        canopyMm: root.stake.canopyMm
        entranceKnown: root.stake.entrance >= 0
        canopyKnown: root.stake.canopy >= 0
        stage: root.stake.stage
        entranceText: root.stake.entranceWords
        canopyText: root.stake.canopyWords
        clearanceText: root.stake.clearance
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "tooLow"
        visible: root.stake.warning.length > 0
        kind: "caution"
        text: root.stake.warning
        Layout.fillWidth: true
    }

    FieldNumber {
        id: canopy
        objectName: "canopy"
        label: qsTr("Height of the crop")
        unit: qsTr("cm")
        step: 5
        to: 1000
        known: root.stake.canopy >= 0
        value: root.stake.canopy
        Layout.fillWidth: true
        onEdited: value => root.stake.canopy = value
        onCleared: root.stake.canopy = -1
    }

    FieldNumber {
        id: entrance
        objectName: "entrance"
        label: qsTr("Height of the entrance")
        unit: qsTr("cm")
        step: 5
        to: 1000
        known: root.stake.entrance >= 0
        value: root.stake.entrance
        Layout.fillWidth: true
        onEdited: value => root.stake.entrance = value
        onCleared: root.stake.entrance = -1
    }

    Words {
        objectName: "growth"
        visible: text.length > 0
        text: root.stake.growth
        kind: "small"
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "heightRule"
        label: qsTr("As the crop grows, the trap shall")
        keys: root.stake.ruleKeys
        labels: [qsTr("stay at this height"), qsTr("rise with the crop")]
        chosen: root.stake.heightRule
        Layout.fillWidth: true
        onPicked: key => root.stake.heightRule = key
    }

    Words {
        objectName: "heightAdvice"
        visible: text.length > 0
        text: root.stake.advice
        kind: "soft"
        Layout.fillWidth: true
    }
}
