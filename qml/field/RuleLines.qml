// SPDX-License-Identifier: MIT
// Rules of the protocol under a heading, one line each.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property string title
    required property list<string> lines

    spacing: Theme.gapSmall
    visible: root.lines.length > 0

    SectionLabel {
        text: root.title
        Layout.fillWidth: true
    }

    Each {
        model: root.lines

        Words {
            required property string modelData
            objectName: "rule"
            text: modelData
            Layout.fillWidth: true
        }
    }
}
