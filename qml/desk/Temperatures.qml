// SPDX-License-Identifier: MIT
// Daily temperatures of a weather station from a table: chosen, looked at, set right, brought in.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property TemperaturesViewModel model
    property string subject
    property string path: ""
    property bool isColumnsShown: false
    readonly property bool hasFile: root.model.file.length > 0

    title: qsTr("Bring in temperatures")
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
        visible: !root.hasFile
        Layout.fillWidth: true

        Words {
            text: qsTr("A table as .csv, as weather services write it: the names of the columns in the first row, below it a day a row with its lowest and its highest temperature.")
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
        visible: root.hasFile && !root.model.isRunning
        title: root.model.file.split("/").pop()
        subtitle: root.model.doneLine.length > 0 ? qsTr("Choose another file") : qsTr("Nothing is kept yet. Choose another file")
        Layout.fillWidth: true
        onClicked: root.model.forget()
    }

    NoticeBar {
        objectName: "missing"
        visible: root.hasFile && root.model.missing.length > 0
        kind: "question"
        title: qsTr("To be said first")
        text: root.model.missing
        Layout.fillWidth: true
    }

    TemperaturesStation {
        visible: root.hasFile
        enabled: !root.model.isRunning
        model: root.model
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "unit"
        visible: root.model.isSeen
        label: qsTr("Degrees of the file")
        keys: ["c", "f"]
        labels: [qsTr("Celsius"), qsTr("Fahrenheit")]
        chosen: root.model.unit
        Layout.fillWidth: true
        onPicked: key => root.model.choose("unit", key)
    }

    ChoiceChips {
        objectName: "order"
        visible: root.model.isSeen && root.model.needsOrder
        label: qsTr("Day or month first")
        keys: ["day", "month"]
        labels: [qsTr("Day first"), qsTr("Month first")]
        chosen: root.model.order
        Layout.fillWidth: true
        onPicked: key => root.model.choose("order", key)
    }

    ListCard {
        objectName: "columns"
        visible: root.model.isSeen && root.model.header.length > 0
        title: qsTr("Columns")
        subtitle: root.model.columns.map(number => root.model.header[Number(number) - 1] ?? "?").join(" · ")
        Layout.fillWidth: true
        onClicked: root.isColumnsShown = !root.isColumnsShown
    }

    Each {
        model: root.model.isSeen && (root.isColumnsShown || root.model.columns.includes("")) ? ["date", "minimum", "maximum"] : []

        ChoiceChips {
            required property string modelData
            required property int index
            objectName: "column_" + modelData
            label: [qsTr("The day"), qsTr("The lowest temperature"), qsTr("The highest temperature")][index]
            keys: root.model.header.map((name, at) => String(at + 1))
            labels: root.model.header
            chosen: root.model.columns[index] ?? ""
            Layout.fillWidth: true
            onPicked: key => root.model.chooseColumn(modelData, key)
        }
    }

    Card {
        objectName: "facts"
        visible: root.model.isSeen && root.model.facts.count > 0
        Layout.fillWidth: true

        Each {
            model: root.model.facts

            FactRow {
                required property int index
                required property string title
                required property string besides
                objectName: "fact" + index
                label: title
                value: besides
                Layout.fillWidth: true
            }
        }
    }

    RefusedRows {
        rows: root.model.refused
        more: root.model.moreRefused
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "bring"
            visible: root.model.isSeen && !root.model.isRunning
            enabled: root.model.canBring
            text: root.model.bringLine
            Layout.fillWidth: true
            onClicked: root.model.bring()
        }
    ]
}
