// SPDX-License-Identifier: MIT
// The rows of a table that nothing is made of, each with its line and why.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

Card {
    id: root

    required property RowList rows
    property string more: ""

    objectName: "refused"
    visible: root.rows.count > 0

    Words {
        text: qsTr("Nothing is made of these rows")
        kind: "strong"
        Layout.fillWidth: true
    }

    Each {
        model: root.rows

        Words {
            required property int index
            required property string title
            objectName: "refused" + index
            text: title
            kind: "small"
            Layout.fillWidth: true
        }
    }

    Words {
        visible: text.length > 0
        text: root.more
        kind: "soft"
        Layout.fillWidth: true
    }
}
