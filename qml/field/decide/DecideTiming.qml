// SPDX-License-Identifier: MIT
// Whether it is the time: crop stage, size of the larvae, pods, and the days of the label before cutting.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property DecisionViewModel model
    readonly property DecisionForm form: root.model.form
    readonly property bool valid: label.valid && cutting.valid

    spacing: Theme.gap

    Words {
        objectName: "timing"
        text: root.model.timing
        kind: "title"
        Layout.fillWidth: true
    }

    SentenceList {
        objectName: "timingReasons"
        title: qsTr("Why")
        sentences: root.model.timingReasons
        Layout.fillWidth: true
    }

    FieldNumber {
        id: label
        objectName: "labelDays"
        label: qsTr("Days before harvest, from the label")
        hint: qsTr("They count to cutting: swathing or straight cutting.")
        known: root.form.labelDays.length > 0
        value: Number(root.form.labelDays)
        to: 365
        Layout.fillWidth: true
        onEdited: value => root.form.labelDays = String(value)
        onCleared: root.form.labelDays = ""
    }

    FieldDay {
        id: cutting
        objectName: "cuttingDay"
        label: qsTr("Cutting planned on")
        day: root.form.cuttingDay
        today: root.model.today
        emptyAllowed: true
        Layout.fillWidth: true
        onEdited: day => root.form.cuttingDay = day
        onCleared: root.form.cuttingDay = ""
    }
}
