// SPDX-License-Identifier: MIT
// What bringing a table in would make and meet, which rows are refused, and why.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property ImportViewModel model

    spacing: Theme.gap

    Card {
        objectName: "makes"
        Layout.fillWidth: true

        Words {
            text: qsTr("What would be made")
            kind: "strong"
            Layout.fillWidth: true
        }

        Each {
            model: root.model.makes

            FactRow {
                required property int index
                required property string title
                required property string besides
                objectName: "make" + index
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

    Card {
        objectName: "notes"
        visible: root.model.notes.count > 0
        Layout.fillWidth: true

        Words {
            text: qsTr("Worth a look; these are brought in all the same")
            kind: "strong"
            Layout.fillWidth: true
        }

        Each {
            model: root.model.notes

            Words {
                required property string title
                text: title
                kind: "small"
                Layout.fillWidth: true
            }
        }

        Words {
            visible: text.length > 0
            text: root.model.moreNotes
            kind: "soft"
            Layout.fillWidth: true
        }
    }
}
