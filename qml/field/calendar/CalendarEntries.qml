// SPDX-License-Identifier: MIT
// The calendar as sentences: each thing with its days, whether it was measured, why, and by whom.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property RowList entries

    spacing: Theme.gapSmall

    Each {
        model: root.entries

        Card {
            id: entry

            required property int index
            required property string title
            required property string besides
            required property string detail
            required property list<string> flags

            objectName: "entry" + entry.index
            spacing: Theme.gapTiny
            Layout.fillWidth: true

            Words {
                objectName: "title"
                text: entry.title
                kind: "strong"
                Layout.fillWidth: true
            }

            Words {
                objectName: "detail"
                text: entry.besides + ": " + entry.detail
                Layout.fillWidth: true
            }

            Words {
                objectName: "flags"
                text: entry.flags.join("\n")
                kind: "soft"
                Layout.fillWidth: true
            }
        }
    }
}
