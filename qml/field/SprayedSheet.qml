// SPDX-License-Identifier: MIT
// Was the field sprayed since the last visit: with what, when, and how long must people stay out?
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

Sheet {
    id: root

    required property VisitLureViewModel model

    name: qsTr("Sprayed since the last visit?")

    Words {
        text: qsTr("Sprayed since the last visit?")
        kind: "title"
        Layout.fillWidth: true
    }

    Words {
        text: qsTr("A spray can lower the catch. Ask the landowner when you do not know.")
        kind: "small"
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "sprayedChips"
        label: qsTr("Sprayed since the last visit?")
        labelShown: false
        keys: ["no", "yes"]
        labels: [qsTr("No"), qsTr("Yes")]
        chosen: root.model.sprayed ? "yes" : root.model.saidNotSprayed ? "no" : ""
        onPicked: key => root.model.setSprayed(key === "yes")
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "sprayedWhat"
        visible: root.model.sprayed
        label: qsTr("With what")
        text: root.model.sprayedWhat
        onEdited: text => root.model.sprayedWhat = text
        Layout.fillWidth: true
    }

    FieldDay {
        objectName: "sprayedDay"
        visible: root.model.sprayed
        label: qsTr("When")
        day: root.model.sprayedDay
        today: root.model.today
        onEdited: day => root.model.sprayedDay = day
        Layout.fillWidth: true
    }

    FieldNumber {
        objectName: "reentryHours"
        visible: root.model.sprayed
        label: qsTr("Re-entry time on its label")
        known: root.model.reentryKnown
        value: root.model.reentryHours
        unit: qsTr("h", "hours")
        to: 2000
        step: 12
        onEdited: hours => root.model.setReentry(hours)
        onCleared: root.model.clearReentry()
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "reentry"
        visible: text.length > 0
        kind: "caution"
        text: root.model.reentry
        Layout.fillWidth: true
    }

    InkButton {
        objectName: "sprayedDone"
        text: qsTr("Done")
        Layout.fillWidth: true
        onClicked: {
            root.settle();
            root.close();
        }
    }
}
