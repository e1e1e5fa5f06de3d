// SPDX-License-Identifier: MIT
// One field of a record, in the part that suits what it holds.
import QtQuick
import Duskrow.App
import Duskrow.Parts

Loader {
    id: root

    required property CorrectionEntries entries
    required property string today
    required property int index
    required property string field
    required property string label
    required property string sort
    required property list<string> keys
    required property list<string> words
    required property string text
    required property bool known
    required property var number
    required property var unit
    required property var step
    required property var low
    required property var high
    required property var decimals
    required property int most
    // Choices, lines and remarks take what is typed; days and numbers may refuse it.
    readonly property bool valid: root.item?.valid ?? true

    objectName: "entry_" + root.field
    sourceComponent: {
        switch (root.sort) {
        case "choice":
            return choice;
        case "number":
            return amount;
        case "day":
            return day;
        case "remark":
            return remark;
        default:
            return line;
        }
    }

    Component {
        id: choice
        ChoiceChips {
            label: root.label
            keys: root.keys
            labels: root.words
            chosen: root.text
            onPicked: key => root.entries.setText(root.index, key)
        }
    }

    Component {
        id: amount
        FieldNumber {
            label: root.label
            hint: qsTr("Empty: not observed")
            known: root.known
            value: root.number
            unit: root.unit
            step: root.step
            from: root.low
            to: root.high
            decimals: root.decimals
            onEdited: value => root.entries.setNumber(root.index, value)
            onCleared: root.entries.clear(root.index)
        }
    }

    Component {
        id: day
        FieldDay {
            label: root.label
            day: root.text
            today: root.today
            emptyAllowed: true
            onEdited: day => root.entries.setText(root.index, day)
            onCleared: root.entries.clear(root.index)
        }
    }

    Component {
        id: line
        FieldText {
            label: root.label
            text: root.text
            maximumLength: root.most
            onEdited: text => root.entries.setText(root.index, text)
        }
    }

    Component {
        id: remark
        FieldRemark {
            label: root.label
            text: root.text
            maximumLength: root.most
            onEdited: text => root.entries.setText(root.index, text)
        }
    }
}
