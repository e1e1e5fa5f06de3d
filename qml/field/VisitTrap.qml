// SPDX-License-Identifier: MIT
// Does the trap still stand above the canopy, and did it work?
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

VisitFrame {
    id: root

    readonly property VisitTrapViewModel model: root.visit.trap

    StakePicture {
        objectName: "stake"
        kind: root.model.trapShape
        description: root.model.description
        entranceKnown: root.model.entranceKnown
        canopyKnown: root.model.canopyKnown
        entranceMm: root.model.entranceMm
        canopyMm: root.model.canopyMm
        stage: root.model.stage
        entranceText: root.model.entranceWords
        canopyText: root.model.canopyWords
        clearanceText: root.model.clearance
        Layout.fillWidth: true
    }

    Words {
        objectName: "heightsNotAsked"
        visible: !root.model.heightsAsked
        text: qsTr("Flowering is over: the crop grows no taller, so heights are not asked any more.")
        Layout.fillWidth: true
    }

    FieldNumber {
        objectName: "canopy"
        visible: root.model.heightsAsked
        label: qsTr("Canopy now")
        hint: root.model.canopyMeasured || root.model.canopyLast.length === 0 ? "" : qsTr("It was %1. Change it, or say that it still is.").arg(root.model.canopyLast)
        known: root.model.canopyKnown
        value: root.model.canopyCm
        unit: qsTr("cm")
        to: 1000
        step: 5
        onEdited: cm => root.model.setCanopy(cm)
        onCleared: root.model.clearCanopy()
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "still"
        visible: root.model.heightsAsked && text.length > 0
        text: root.model.stillWords
        Layout.fillWidth: true
        onClicked: root.model.stillAsBefore()
    }

    FieldNumber {
        objectName: "entrance"
        visible: root.model.heightsAsked
        label: qsTr("Entrance of the trap")
        known: root.model.entranceKnown
        value: root.model.entranceCm
        unit: qsTr("cm")
        to: 1000
        step: 5
        emptyAllowed: false
        onEdited: cm => root.model.setEntrance(cm)
        Layout.fillWidth: true
    }

    Words {
        objectName: "advice"
        visible: text.length > 0 && root.model.heightsAsked
        text: root.model.advice
        Layout.fillWidth: true
    }

    InkButton {
        objectName: "raise"
        visible: root.model.raiseNow && root.model.heightsAsked
        text: root.model.raiseWords
        Layout.fillWidth: true
        onClicked: root.model.raise()
    }

    ToggleRow {
        objectName: "floweringOver"
        visible: root.model.floweringAsked
        text: qsTr("Flowering is over")
        detail: qsTr("Then heights are not asked any more.")
        checked: root.model.floweringOver
        onToggled: root.model.floweringOver = checked
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "state"
        label: qsTr("How was the trap?")
        keys: root.model.stateKeys
        labels: root.model.stateNames
        chosen: root.model.state
        onPicked: key => root.model.state = key
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "atLeast"
        visible: text.length > 0
        text: root.model.atLeastWords
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "undo"
        visible: root.model.canUndo
        text: qsTr("Undo")
        onClicked: root.model.undo()
    }

    pinned: [
        ActButton {
            objectName: "next"
            text: qsTr("Next: lure and strip")
            Layout.fillWidth: true
            onClicked: root.visit.next()
        }
    ]
}
