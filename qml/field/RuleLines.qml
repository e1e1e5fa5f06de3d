// SPDX-License-Identifier: MIT
// What the rules of the protocol say of a trap's season so far, one line each.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property list<string> lines

    spacing: Theme.gapSmall
    visible: root.lines.length > 0

    SectionLabel {
        text: qsTr("What the rules say so far")
        Layout.fillWidth: true
    }

    Repeater {
        model: root.lines

        Words {
            required property string modelData
            objectName: "rule"
            text: modelData
            Layout.fillWidth: true
        }
    }
}
