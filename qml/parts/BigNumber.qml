// SPDX-License-Identifier: MIT
// A very large number and, beside it or below, what it means.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

GridLayout {
    id: root

    required property string value
    property string caption: ""
    property list<string> lines
    readonly property bool beside: Math.min(measure.width(root.value, Theme.typeHuge), root.width)
                                   + measure.widest(root.lines, Theme.typeSmall) + Theme.gapWide <= root.width

    function spoken(): string {
        let sentence = root.value + " " + root.caption;
        for (let i = 0; i < root.lines.length; ++i)
            sentence += ", " + root.lines[i];
        return sentence;
    }

    columns: root.beside ? 2 : 1
    columnSpacing: Theme.gapWide
    rowSpacing: 0

    Accessible.role: Accessible.StaticText
    Accessible.name: root.spoken()

    Measure {
        id: measure
    }

    Words {
        objectName: "value"
        text: root.value
        font.pixelSize: Theme.typeHuge
        font.weight: Font.Bold
        font.letterSpacing: -0.02 * Theme.typeHuge
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Theme.typeTitle
        lineHeight: 1
        wrapMode: Text.NoWrap
        Layout.fillWidth: true
        Layout.minimumWidth: 0
        Accessible.ignored: true
    }

    ColumnLayout {
        visible: root.lines.length > 0
        spacing: Theme.gapTiny
        Layout.alignment: Qt.AlignVCenter
        Layout.row: root.beside ? 0 : 2
        Layout.column: root.beside ? 1 : 0
        Layout.fillWidth: !root.beside

        // qmllint disable unqualified
        Repeater {
            model: root.lines

            Words {
                required property string modelData
                required property int index
                text: modelData
                kind: index === 0 ? "small" : "soft"
                font.weight: index === 0 ? Font.DemiBold : Font.Normal
                horizontalAlignment: root.beside ? Text.AlignRight : Text.AlignLeft
                Layout.fillWidth: true
                Accessible.ignored: true
            }
        }
        // qmllint enable unqualified
    }

    Words {
        objectName: "caption"
        visible: text.length > 0
        text: root.caption
        kind: "soft"
        Layout.row: 1
        Layout.column: 0
        Layout.columnSpan: root.columns
        Layout.fillWidth: true
        Accessible.ignored: true
    }
}
