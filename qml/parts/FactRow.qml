// SPDX-License-Identifier: MIT
// A label and its value; side by side where both fit, else one below the other.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property string label
    required property string value
    readonly property real labelWidth: measure.width(root.label, Theme.typeSmall)
    readonly property real valueWidth: measure.width(root.value, Theme.typeSmall)
    readonly property bool beside: root.labelWidth + root.valueWidth + Theme.gap <= root.width

    implicitWidth: 280
    implicitHeight: Math.max(labelWords.implicitHeight, valueWords.y + valueWords.implicitHeight)

    Accessible.role: Accessible.StaticText
    Accessible.name: root.label + ": " + root.value

    Measure {
        id: measure
    }

    Words {
        id: labelWords
        width: root.width
        text: root.label
        kind: "soft"
        Accessible.ignored: true
    }

    Words {
        id: valueWords
        y: root.beside ? 0 : labelWords.height
        width: root.width
        text: root.value
        kind: "small"
        font.weight: Font.DemiBold
        horizontalAlignment: root.beside ? Text.AlignRight : Text.AlignLeft
        Accessible.ignored: true
    }
}
