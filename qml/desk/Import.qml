// SPDX-License-Identifier: MIT
// Past years and other people's counts from a table: chosen, looked at, set right, brought in, taken back.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property ImportViewModel model
    property string subject
    property string path: ""

    title: qsTr("Bring in past years")
    canGoBack: !root.model.isRunning

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "done"
        visible: root.model.doneLine.length > 0
        kind: "kept"
        text: root.model.doneLine
        Layout.fillWidth: true
    }

    ProgressPanel {
        objectName: "progress"
        visible: root.model.isRunning
        text: qsTr("Records are being kept")
        part: root.model.part
        Layout.fillWidth: true
        onStopped: root.model.stop()
    }

    Card {
        visible: root.model.file.length === 0
        Layout.fillWidth: true

        Words {
            text: qsTr("A table as .csv, as every spreadsheet saves it: the names of the columns in the first row, a site, a day and the number caught in each row below; or one column for each day or week.")
            Layout.fillWidth: true
        }

        FieldPath {
            objectName: "file"
            label: qsTr("The file")
            isFolder: false
            filters: [qsTr("Tables (*.csv *.txt *.tsv)"), qsTr("All files (*)")]
            path: root.path
            Layout.fillWidth: true
            onEdited: path => root.path = path
            onAccepted: root.model.open(root.path)
        }

        InkButton {
            objectName: "look"
            text: qsTr("Look into it")
            enabled: root.path.trim().length > 0 && !root.model.isReading
            Layout.fillWidth: true
            onClicked: root.model.open(root.path)
        }
    }

    Words {
        objectName: "reading"
        visible: root.model.isReading
        text: qsTr("The file is being read.")
        kind: "soft"
        Layout.fillWidth: true
    }

    ListCard {
        objectName: "other"
        visible: root.model.file.length > 0 && !root.model.isRunning
        title: root.model.file.split("/").pop()
        subtitle: root.model.doneLine.length > 0 ? qsTr("Choose another file") : qsTr("Nothing is kept yet. Choose another file")
        Layout.fillWidth: true
        onClicked: root.model.forget()
    }

    NoticeBar {
        objectName: "missing"
        visible: root.model.missing.length > 0
        kind: "question"
        title: qsTr("To be said first")
        text: root.model.missing
        Layout.fillWidth: true
    }

    ImportMakes {
        visible: root.model.isSeen && root.model.makes.count > 0
        model: root.model
        Layout.fillWidth: true
    }

    ImportForm {
        visible: root.model.isSeen
        enabled: !root.model.isRunning
        model: root.model
        Layout.fillWidth: true
    }

    SectionLabel {
        visible: root.model.isSeen
        text: qsTr("What the columns hold")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.isSeen ? root.model.columns : null

        ImportColumn {
            importing: root.model
            enabled: !root.model.isRunning
            Layout.fillWidth: true
        }
    }

    ImportEarlier {
        visible: root.model.earlier.count > 0 && root.model.file.length === 0
        model: root.model
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "bring"
            visible: root.model.isSeen && !root.model.isRunning && root.model.makes.count > 0
            enabled: root.model.canBring
            text: root.model.bringLine
            Layout.fillWidth: true
            onClicked: root.model.bring()
        }
    ]
}
