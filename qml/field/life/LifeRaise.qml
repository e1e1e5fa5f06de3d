// SPDX-License-Identifier: MIT
// The trap is raised: its new entrance height against the canopy, drawn to scale.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

LifeAct {
    id: root

    title: qsTr("Raise the trap")
    canKeep: height.valid

    StakePicture {
        objectName: "stake"
        kind: root.model.trapShape
        description: qsTr("The trap on its stake: %1, %2. %3").arg(root.model.entranceWords).arg(root.model.canopyWords).arg(root.model.clearance)
        entranceMm: root.form.entranceCm * 10
        entranceKnown: root.form.entranceKnown
        canopyMm: root.form.canopyCm * 10
        canopyKnown: root.form.canopyKnown
        entranceText: root.model.entranceWords
        canopyText: root.model.canopyWords
        clearanceText: root.model.clearance
        Layout.fillWidth: true
    }

    FieldNumber {
        id: height
        objectName: "entrance"
        label: qsTr("Entrance above the ground")
        unit: qsTr("cm")
        known: root.form.entranceKnown
        value: root.form.entranceCm
        from: 0
        to: 1000
        step: 5
        emptyAllowed: false
        Layout.fillWidth: true
        onEdited: value => {
            root.form.entranceKnown = true;
            root.form.entranceCm = value;
        }
    }

    Words {
        objectName: "advice"
        visible: text.length > 0
        text: root.model.raiseAdvice
        Layout.fillWidth: true
    }
}
