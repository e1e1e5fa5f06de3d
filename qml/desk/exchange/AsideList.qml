// SPDX-License-Identifier: MIT
// Changes or files with what is the matter with each, and up to two answers.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property RowList rows
    required property string heading
    property string act: ""
    property string otherAct: ""

    signal acted(string key, string subject)
    signal declined(string key, string subject)

    visible: root.rows.count > 0
    spacing: Theme.gap

    SectionLabel {
        text: root.heading
        Layout.fillWidth: true
    }

    Each {
        model: root.rows

        Card {
            id: row

            required property int index
            required property string key
            required property string title
            required property string besides
            required property string detail
            required property string subject
            required property list<string> flags
            objectName: "row" + row.index
            Layout.fillWidth: true

            Words {
                objectName: "rowTitle"
                text: row.title
                kind: "strong"
                wrapMode: Text.WrapAtWordBoundaryOrAnywhere
                Layout.fillWidth: true
            }

            Words {
                visible: text.length > 0
                text: row.besides
                kind: "soft"
                Layout.fillWidth: true
            }

            Words {
                visible: text.length > 0
                text: row.flags.join("\n")
                kind: "small"
                Layout.fillWidth: true
            }

            Words {
                objectName: "rowReason"
                visible: text.length > 0
                text: row.detail
                kind: "error"
                wrapMode: Text.WrapAtWordBoundaryOrAnywhere
                Layout.fillWidth: true
            }

            PlainButton {
                objectName: "act"
                visible: root.act.length > 0
                text: root.act
                Layout.fillWidth: true
                onClicked: root.acted(row.key, row.subject)
            }

            PlainButton {
                objectName: "other"
                visible: root.otherAct.length > 0
                text: root.otherAct
                Layout.fillWidth: true
                onClicked: root.declined(row.key, row.subject)
            }
        }
    }
}
