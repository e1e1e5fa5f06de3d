// SPDX-License-Identifier: MIT
// How a file is written down, as it was found, and the way to say it otherwise.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property ImportViewModel model
    property string changing: "" // the line that is being changed

    function codesOf(key: string): list<string> {
        switch (key) {
        case "encoding":
            return ["utf-8", "windows-1252", "utf-16le", "utf-16be"];
        case "delimiter":
            return ["comma", "semicolon", "tab", "bar"];
        case "order":
            return ["day", "month"];
        default:
            return ["point", "comma"];
        }
    }

    function namesOf(key: string): list<string> {
        switch (key) {
        case "encoding":
            return ["UTF-8", "Windows-1252", "UTF-16 LE", "UTF-16 BE"];
        case "delimiter":
            return [qsTr("Comma"), qsTr("Semicolon"), qsTr("Tab"), qsTr("Bar")];
        case "order":
            return [qsTr("Day first"), qsTr("Month first")];
        default:
            return [qsTr("Point"), qsTr("Comma")];
        }
    }

    spacing: Theme.gapSmall

    SectionLabel {
        text: qsTr("How the file is written")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.form

        ColumnLayout {
            id: line
            required property string key
            required property string title
            required property string besides
            required property string subject
            spacing: Theme.gapSmall
            Layout.fillWidth: true

            ListCard {
                objectName: "form_" + line.key
                title: line.title
                subtitle: line.besides
                Layout.fillWidth: true
                onClicked: root.changing = root.changing === line.key ? "" : line.key
            }

            ChoiceChips {
                objectName: "chips_" + line.key
                visible: root.changing === line.key
                label: line.title
                labelShown: false
                keys: root.codesOf(line.key)
                labels: root.namesOf(line.key)
                chosen: line.subject
                Layout.fillWidth: true
                onPicked: code => root.model.choose(line.key, code)
            }
        }
    }

    ChoiceChips {
        objectName: "pest"
        visible: root.model.pests.length > 1
        label: qsTr("Which pest was counted?")
        keys: root.model.pests
        labels: root.model.pests
        chosen: root.model.pest
        Layout.fillWidth: true
        onPicked: code => root.model.choose("pest", code)
    }

    ChoiceChips {
        objectName: "emptied"
        label: qsTr("Were the traps emptied at each count?")
        keys: ["yes", "no", "unsaid"]
        labels: [qsTr("yes"), qsTr("no"), qsTr("nobody knows")]
        chosen: root.model.emptied
        Layout.fillWidth: true
        onPicked: code => root.model.choose("emptied", code)
    }

    Words {
        objectName: "emptiedLine"
        text: root.model.emptiedLine
        kind: "soft"
        Layout.fillWidth: true
    }

    FieldText {
        id: year
        objectName: "year"
        label: qsTr("The year of all days, where the table does not say it")
        text: root.model.year
        maximumLength: 4
        inputMethodHints: Qt.ImhDigitsOnly
        Layout.fillWidth: true
        onAccepted: root.model.choose("year", year.text)
    }

    PlainButton {
        objectName: "takeYear"
        visible: year.text !== root.model.year
        text: qsTr("Take this year")
        Layout.fillWidth: true
        onClicked: root.model.choose("year", year.text)
    }
}
