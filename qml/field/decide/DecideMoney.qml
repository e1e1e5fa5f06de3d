// SPDX-License-Identifier: MIT
// What control costs and what the harvest brings, in the user's own units; and the threshold that comes of it.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property DecisionViewModel model
    readonly property DecisionForm form: root.model.form

    spacing: Theme.gap

    component Amount: FieldText {
        maximumLength: 20
        inputMethodHints: Qt.ImhFormattedNumbersOnly
        Layout.fillWidth: true
    }

    Amount {
        objectName: "cost"
        visible: !root.form.inParts
        label: qsTr("Control costs, all together")
        hint: root.form.costUnit
        text: root.form.cost
        onEdited: text => root.form.cost = text
    }

    Amount {
        objectName: "product"
        visible: root.form.inParts
        label: qsTr("Product")
        hint: root.form.costUnit
        text: root.form.product
        onEdited: text => root.form.product = text
    }

    Amount {
        objectName: "application"
        visible: root.form.inParts
        label: qsTr("Application")
        hint: root.form.costUnit
        text: root.form.application
        onEdited: text => root.form.application = text
    }

    Amount {
        objectName: "tracks"
        visible: root.form.inParts
        label: qsTr("Crop lost in the wheel tracks")
        hint: root.form.costUnit
        text: root.form.tracks
        onEdited: text => root.form.tracks = text
    }

    ToggleRow {
        objectName: "inParts"
        text: qsTr("In parts: product, application, wheel tracks")
        checked: root.form.inParts
        Layout.fillWidth: true
        onToggled: root.form.inParts = checked
    }

    ChoiceChips {
        objectName: "costUnit"
        label: qsTr("Cost in")
        keys: ["CAD/ac", "CAD/ha", "USD/ac", "USD/ha"]
        labels: keys
        chosen: root.form.costUnit
        Layout.fillWidth: true
        onPicked: key => root.form.costUnit = key
    }

    Amount {
        objectName: "price"
        label: qsTr("The harvest brings")
        hint: root.form.priceUnit
        text: root.form.price
        onEdited: text => root.form.price = text
    }

    ChoiceChips {
        objectName: "priceUnit"
        label: qsTr("Price in")
        keys: ["CAD/bu", "CAD/t", "USD/bu", "USD/t"]
        labels: keys
        chosen: root.form.priceUnit
        Layout.fillWidth: true
        onPicked: key => root.form.priceUnit = key
    }

    ToggleRow {
        objectName: "dry"
        text: qsTr("A very dry season")
        detail: root.model.dryLine
        checked: root.form.dry
        Layout.fillWidth: true
        onToggled: root.form.dry = checked
    }

    Amount {
        objectName: "divisor"
        visible: root.form.dry
        label: qsTr("Threshold divided by")
        hint: qsTr("Your own judgement; the published number is preset.")
        text: root.form.divisor
        onEdited: text => root.form.divisor = text
    }

    NoticeBar {
        objectName: "moneyError"
        visible: text.length > 0
        kind: "caution"
        text: root.model.moneyError
        Layout.fillWidth: true
    }

    Words {
        objectName: "thresholdLine"
        visible: text.length > 0
        text: root.model.thresholdLine
        kind: "strong"
        Layout.fillWidth: true
    }

    Words {
        objectName: "lossLine"
        visible: text.length > 0
        text: root.model.lossLine
        Layout.fillWidth: true
    }

    SentenceList {
        objectName: "notes"
        title: qsTr("About this number")
        sentences: root.model.notes
        Layout.fillWidth: true
    }

    ThresholdTable {
        objectName: "table"
        visible: root.model.grid.columns > 0
        grid: root.model.grid
        Layout.fillWidth: true
        onPicked: (cost, price) => {
            root.form.inParts = false;
            root.form.cost = cost;
            root.form.price = price;
        }
    }
}
