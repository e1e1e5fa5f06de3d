// SPDX-License-Identifier: MIT
// Joins a programme by a code: typed, pasted, or with a file; and what comes along.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property JoinViewModel model
    property string subject

    title: qsTr("Join by a code")
    subtitle: qsTr("The coordinator gave you ten characters, or a text or picture that holds them.")

    FieldText {
        objectName: "code"
        label: qsTr("Code, or the text you were sent")
        hint: qsTr("Such as 7K2QD-M4XWA. Capital letters and hyphens do not matter.")
        text: root.model.typed
        error: root.model.typedError
        maximumLength: 2000
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhUppercaseOnly
        Layout.fillWidth: true
        onEdited: text => root.model.typed = text
        onAccepted: root.model.join()
    }

    ChoiceChips {
        objectName: "from"
        label: qsTr("Where is the programme?")
        keys: ["hub", "folder", "file"]
        labels: [qsTr("at a hub"), qsTr("in a folder"), qsTr("in a file")]
        chosen: root.model.from
        Layout.fillWidth: true
        onPicked: key => root.model.from = key
    }

    FieldText {
        objectName: "hub"
        visible: root.model.from === "hub"
        label: qsTr("Address of the hub")
        hint: qsTr("It is in the text and in the picture; else ask the coordinator.")
        text: root.model.hub
        maximumLength: 300
        inputMethodHints: Qt.ImhUrlCharactersOnly | Qt.ImhNoAutoUppercase
        Layout.fillWidth: true
        onEdited: text => root.model.hub = text
        onAccepted: root.model.join()
    }

    FieldPath {
        objectName: "folder"
        visible: root.model.from === "folder"
        label: qsTr("The folder that you share with the others")
        path: root.model.folder
        Layout.fillWidth: true
        onEdited: path => root.model.folder = root.model.pathOf(path)
        onAccepted: root.model.join()
    }

    FieldPath {
        objectName: "file"
        visible: root.model.from === "file"
        label: qsTr("The file from the coordinator")
        hint: qsTr("Its name ends in .dusk.")
        isFolder: false
        filters: [qsTr("Carried files (*.dusk)"), qsTr("All files (*)")]
        path: root.model.file
        Layout.fillWidth: true
        onEdited: path => root.model.file = root.model.pathOf(path)
        onAccepted: root.model.join()
    }

    FieldText {
        objectName: "label"
        label: qsTr("What this device is called")
        hint: qsTr("The coordinator sees it beside your name, to tell your devices apart.")
        text: root.model.label
        maximumLength: 60
        Layout.fillWidth: true
        onEdited: text => root.model.label = text
    }

    ToggleRow {
        objectName: "along"
        visible: root.model.alongLine.length > 0
        text: qsTr("Bring along what I kept alone")
        detail: qsTr("%1, under your name. The present file stays as it is.").arg(root.model.alongLine)
        checked: root.model.bringsAlong
        Layout.fillWidth: true
        onToggled: root.model.bringsAlong = checked
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    ProgressPanel {
        objectName: "progress"
        visible: root.model.busy
        text: root.model.exchanger.doing
        part: root.model.exchanger.part
        Layout.fillWidth: true
        onStopped: root.model.exchanger.stop()
    }

    pinned: [
        ActButton {
            objectName: "join"
            text: qsTr("Join")
            enabled: !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.join()
        }
    ]
}
