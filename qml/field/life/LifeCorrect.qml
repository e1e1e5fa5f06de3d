// SPDX-License-Identifier: MIT
// A fact of the set-up is set right. The history keeps what was there before.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

LifeAct {
    id: root

    title: qsTr("Correct the set-up")
    dayLabel: qsTr("Set up on")
    canKeep: entrance.valid && canopy.valid && expiry.valid && agreed.valid

    FieldText {
        objectName: "tag"
        label: qsTr("Tag on the trap")
        text: root.form.tag
        Layout.fillWidth: true
        onEdited: text => root.form.tag = text
    }

    FieldNumber {
        id: entrance
        objectName: "entrance"
        label: qsTr("Entrance at set-up")
        hint: qsTr("Empty: not measured")
        unit: qsTr("cm")
        known: root.form.entranceKnown
        value: root.form.entranceCm
        to: 1000
        step: 5
        Layout.fillWidth: true
        onEdited: value => {
            root.form.entranceKnown = true;
            root.form.entranceCm = value;
        }
        onCleared: root.form.entranceKnown = false
    }

    FieldNumber {
        id: canopy
        objectName: "canopy"
        label: qsTr("Canopy at set-up")
        hint: qsTr("Empty: not measured")
        unit: qsTr("cm")
        known: root.form.canopyKnown
        value: root.form.canopyCm
        to: 1000
        step: 5
        Layout.fillWidth: true
        onEdited: value => {
            root.form.canopyKnown = true;
            root.form.canopyCm = value;
        }
        onCleared: root.form.canopyKnown = false
    }

    FieldText {
        objectName: "lot"
        label: qsTr("Lot of the lure")
        text: root.form.lot
        Layout.fillWidth: true
        onEdited: text => root.form.lot = text
    }

    FieldDay {
        id: expiry
        objectName: "expiry"
        label: qsTr("Lure use by")
        day: root.form.expiry
        today: root.model.today
        Layout.fillWidth: true
        onEdited: day => root.form.expiry = day
    }

    FieldText {
        objectName: "landowner"
        label: qsTr("Landowner")
        text: root.form.landowner
        Layout.fillWidth: true
        onEdited: text => root.form.landowner = text
    }

    FieldDay {
        id: agreed
        objectName: "agreedDay"
        label: qsTr("Said yes on")
        day: root.form.agreedDay
        today: root.model.today
        Layout.fillWidth: true
        onEdited: day => root.form.agreedDay = day
    }

    FieldRemark {
        objectName: "gate"
        label: qsTr("Way in")
        text: root.form.gate
        Layout.fillWidth: true
        onEdited: text => root.form.gate = text
    }
}
