// SPDX-License-Identifier: MIT
// The rows of a season: visits or weeks, each with its catch, its numbers and what is particular about it.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property RowList rows
    property string emptyText: ""

    signal opened(string route, string subject)

    spacing: Theme.gapSmall

    EmptyState {
        visible: root.rows.count === 0 && root.emptyText.length > 0
        title: root.emptyText
        Layout.fillWidth: true
    }

    Each {
        model: root.rows

        ListCard {
            id: row

            required property int index
            required property string key
            required property string besides
            required property string detail
            required property list<string> flags
            required property string route
            required property string subject
            required property bool struck
            readonly property string particulars: row.flags.join("\n")

            objectName: "row" + row.index
            rightText: row.besides
            subtitle: row.detail + (row.detail.length > 0 && row.particulars.length > 0 ? "\n" : "") + row.particulars
            strikeout: row.struck
            chevron: row.route.length > 0
            enabled: row.route.length > 0
            Layout.fillWidth: true
            onClicked: root.opened(row.route, row.subject)
        }
    }
}
