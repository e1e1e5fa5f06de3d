// SPDX-License-Identifier: MIT
// The label above a field, and the hint under the label.
import QtQuick

Column {
    id: root

    required property string text
    property string hint: ""

    Words {
        width: root.width
        text: root.text
        kind: "small"
        font.weight: Font.Medium
        Accessible.ignored: true
    }

    Words {
        width: root.width
        visible: text.length > 0
        text: root.hint
        kind: "soft"
        Accessible.ignored: true
    }
}
