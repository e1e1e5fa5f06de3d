// SPDX-License-Identifier: MIT
// The first start: a programme and a name, the rest preset.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property StartViewModel model
    property string how: "alone"

    signal joinWanted

    function choose(how: string): void {
        if (how === "join")
            return root.joinWanted();
        root.how = how;
        root.model.role = how === "others" ? "coordinator" : "grower";
    }

    title: qsTr("A season of traps")
    subtitle: qsTr("Two names and you can set up a trap. Everything else is preset and can be changed later.")
    canGoBack: false

    ChoiceChips {
        objectName: "how"
        label: qsTr("How do you begin?")
        keys: ["alone", "others", "join"]
        labels: [qsTr("on my own"), qsTr("for a group"), qsTr("join by a code")]
        chosen: root.how
        onPicked: key => root.choose(key)
        Layout.fillWidth: true
    }

    Words {
        objectName: "othersNote"
        visible: root.how === "others"
        text: qsTr("You are its coordinator, and invite the others afterwards. This device is its first main device.")
        kind: "soft"
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "myName"
        label: qsTr("Your name")
        text: root.model.myName
        error: root.model.myNameError
        maximumLength: 200
        onEdited: text => root.model.myName = text
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "programmeName"
        label: qsTr("Programme or region")
        hint: qsTr("The group you count for, or your own farm.")
        text: root.model.name
        error: root.model.nameError
        maximumLength: 200
        onEdited: text => root.model.name = text
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "role"
        visible: root.how === "alone"
        label: qsTr("I am a")
        keys: ["grower", "agronomist", "coordinator"]
        labels: [qsTr("grower"), qsTr("agronomist"), qsTr("coordinator")]
        chosen: root.model.role
        onPicked: key => root.model.role = key
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "pest"
        label: qsTr("The traps are for")
        keys: root.model.pestKeys
        labels: root.model.pestLabels
        chosen: root.model.pest
        onPicked: key => root.model.pest = key
        Layout.fillWidth: true
    }

    ToggleRow {
        id: more
        objectName: "more"
        text: qsTr("Set the week and districts myself")
        detail: qsTr("Preset: weeks from Monday to Sunday, counted on Monday, season %1").arg(root.model.year)
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "countDay"
        visible: more.checked
        label: qsTr("Traps are counted on")
        keys: ["1", "2", "3", "4", "5", "6", "7"]
        labels: [1, 2, 3, 4, 5, 6, 7].map(day => Qt.locale().standaloneDayName(day % 7, Locale.ShortFormat))
        chosen: String(root.model.countDay)
        onPicked: key => root.model.countDay = Number(key)
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "weekStart"
        visible: more.checked
        label: qsTr("The reporting week starts on")
        keys: ["7", "1"]
        labels: [qsTr("Sunday"), qsTr("Monday")]
        chosen: String(root.model.weekStart)
        onPicked: key => root.model.weekStart = Number(key)
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "districts"
        visible: more.checked
        label: qsTr("Districts, separated by commas")
        text: root.model.districts
        maximumLength: 2000
        onEdited: text => root.model.districts = text
        Layout.fillWidth: true
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
            objectName: "begin"
            text: qsTr("Begin the season")
            enabled: !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.begin()
        }
    ]
}
