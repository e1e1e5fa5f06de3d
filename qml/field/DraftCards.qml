// SPDX-License-Identifier: MIT
// Half-entered work, to be gone on with.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property RowList drafts

    signal opened(string route, string subject)

    spacing: Theme.gap
    visible: root.drafts.count > 0

    Repeater {
        model: root.drafts

        ListCard {
            required property string detail
            required property string route
            required property string subject
            objectName: "draft"
            subtitle: detail
            due: true
            dueWord: ""
            Layout.fillWidth: true
            onClicked: root.opened(route, subject)
        }
    }
}
