// SPDX-License-Identifier: MIT
// Corrects the programme, its week, its districts and one's own name.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property ProgrammeViewModel model
    property string subject
    readonly property list<string> weekdays: ["1", "2", "3", "4", "5", "6", "7"]
    readonly property list<string> weekdayNames: [1, 2, 3, 4, 5, 6, 7].map(day => Qt.locale().standaloneDayName(day % 7, Locale.ShortFormat))
    readonly property list<string> usualTimes: ["540", "720", "900", "1080", "1260"]
    readonly property string time: String(root.model.reportMinute)
    readonly property list<string> times: root.usualTimes.includes(root.time) ? root.usualTimes : [root.time, ...root.usualTimes]

    title: qsTr("Programme")
    subtitle: qsTr("What stood here before stays in the history.")

    Connections {
        target: root.model
        function onKept() {
            root.back();
        }
    }

    FieldText {
        objectName: "name"
        label: qsTr("Programme or region")
        text: root.model.name
        error: root.model.nameError
        Layout.fillWidth: true
        onEdited: text => root.model.name = text
    }

    FieldText {
        objectName: "myName"
        label: qsTr("Your name")
        text: root.model.myName
        error: root.model.myNameError
        Layout.fillWidth: true
        onEdited: text => root.model.myName = text
    }

    ChoiceChips {
        objectName: "role"
        label: qsTr("I am a")
        keys: ["grower", "agronomist", "coordinator"]
        labels: [qsTr("grower"), qsTr("agronomist"), qsTr("coordinator")]
        chosen: root.model.role
        Layout.fillWidth: true
        onPicked: key => root.model.role = key
    }

    ChoiceChips {
        objectName: "countDay"
        visible: root.model.hasSeason
        label: qsTr("Traps are counted on")
        keys: root.weekdays
        labels: root.weekdayNames
        chosen: String(root.model.countDay)
        Layout.fillWidth: true
        onPicked: key => root.model.countDay = Number(key)
    }

    ChoiceChips {
        objectName: "grace"
        visible: root.model.hasSeason
        label: qsTr("A count still belongs to its day when it is early or late by")
        keys: ["0", "1", "2", "3"]
        labels: [qsTr("no day"), qsTr("1 day"), qsTr("2 days"), qsTr("3 days")]
        chosen: String(root.model.graceDays)
        Layout.fillWidth: true
        onPicked: key => root.model.graceDays = Number(key)
    }

    ChoiceChips {
        objectName: "weekStart"
        visible: root.model.hasSeason
        label: qsTr("The reporting week starts on")
        keys: root.weekdays
        labels: root.weekdayNames
        chosen: String(root.model.weekStart)
        Layout.fillWidth: true
        onPicked: key => root.model.weekStart = Number(key)
    }

    ChoiceChips {
        objectName: "reportDay"
        visible: root.model.hasSeason
        label: qsTr("Counts are reported by")
        keys: ["0", ...root.weekdays]
        labels: [qsTr("no day"), ...root.weekdayNames]
        chosen: String(root.model.reportDay)
        Layout.fillWidth: true
        onPicked: key => root.model.reportDay = Number(key)
    }

    ChoiceChips {
        objectName: "reportTime"
        visible: root.model.hasSeason && root.model.reportDay > 0
        label: qsTr("at")
        keys: root.times
        labels: root.times.map(minute => root.model.timeOfDay(Number(minute)))
        chosen: root.time
        Layout.fillWidth: true
        onPicked: key => root.model.reportMinute = Number(key)
    }

    SectionLabel {
        visible: root.model.hasSeason
        text: qsTr("The traps of this season are for")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.hasSeason ? root.model.pestKeys : []

        ToggleRow {
            required property string modelData
            required property int index
            objectName: "pest-" + modelData
            text: root.model.pestLabels[index]
            checked: root.model.pests.includes(modelData)
            enabled: !root.model.keptPests.includes(modelData)
            Layout.fillWidth: true
            onToggled: root.model.togglePest(modelData)
        }
    }

    SectionLabel {
        text: qsTr("Districts")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.districts

        FieldText {
            required property string modelData
            required property int index
            objectName: "district"
            label: qsTr("District %1").arg(index + 1)
            hint: qsTr("Emptied, it is one no longer.")
            text: modelData
            Layout.fillWidth: true
            onEdited: text => root.model.setDistrict(index, text)
        }
    }

    PlainButton {
        objectName: "addDistrict"
        text: qsTr("One more district")
        Layout.fillWidth: true
        onClicked: root.model.addDistrict()
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "keep"
            text: qsTr("Keep")
            enabled: !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.keep()
        }
    ]
}
