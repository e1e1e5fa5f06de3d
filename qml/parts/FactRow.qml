// SPDX-License-Identifier: MIT
// A label and its value; side by side where both fit, else one below the other.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

GridLayout {
    id: root

    required property string label
    required property string value
    readonly property bool beside: measure.width(root.label, Theme.typeSmall) + measure.width(root.value, Theme.typeSmall) + Theme.gap
                                   <= root.width

    columns: root.beside ? 2 : 1
    columnSpacing: Theme.gap
    rowSpacing: 0

    Accessible.role: Accessible.StaticText
    Accessible.name: root.label + ": " + root.value

    Measure {
        id: measure
    }

    Words {
        text: root.label
        kind: "soft"
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignTop
        Accessible.ignored: true
    }

    Words {
        text: root.value
        kind: "small"
        font.weight: Font.DemiBold
        horizontalAlignment: root.beside ? Text.AlignRight : Text.AlignLeft
        Layout.fillWidth: !root.beside
        Accessible.ignored: true
    }
}
