// SPDX-License-Identifier: MIT
// The two traps of a pair beside each other.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

Card {
    id: root

    required property list<string> labels
    required property list<string> totals

    visible: root.labels.length > 0

    // qmllint disable unqualified
    Each {
        model: root.labels

        FactRow {
            required property string modelData
            required property int index
            label: modelData
            value: root.totals[index] ?? ""
            Layout.fillWidth: true
        }
    }

    // qmllint enable unqualified
    Words {
        text: qsTr("A pair of traps: two counts, never added together.")
        kind: "soft"
        Layout.fillWidth: true
    }
}
