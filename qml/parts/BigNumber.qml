// SPDX-License-Identifier: MIT
// A very large number and, beside it or below, what it means.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property string value
    property string caption: ""
    property list<string> lines
    readonly property real numberWidth: measure.width(root.value, Theme.typeHuge)
    readonly property real linesWidth: measure.widest(root.lines, Theme.typeSmall)
    readonly property real captionEnd: captionWords.y + (root.caption ? captionWords.implicitHeight : 0)
    readonly property bool beside: root.numberWidth + root.linesWidth + Theme.gapWide <= root.width

    function spoken(): string {
        let sentence = root.value + " " + root.caption;
        for (let i = 0; i < root.lines.length; ++i)
            sentence += ", " + root.lines[i];
        return sentence;
    }

    implicitWidth: 280
    implicitHeight: root.captionEnd + (root.beside ? 0 : linesColumn.implicitHeight)

    Accessible.role: Accessible.StaticText
    Accessible.name: root.spoken()

    Measure {
        id: measure
    }

    Words {
        id: number
        objectName: "value"
        x: -0.04 * Theme.typeHuge * Math.min(1, root.width / Math.max(1, root.numberWidth))
        width: root.beside ? root.numberWidth : root.width
        text: root.value
        font.pixelSize: Theme.typeHuge
        font.weight: Font.Bold
        font.letterSpacing: -0.02 * Theme.typeHuge
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Theme.typeTitle
        lineHeight: 1
        // Digits have no descenders; the mark between thousands has one.
        height: Math.ceil(contentHeight * (root.value.includes(Qt.locale().groupSeparator) ? 1 : 0.86))
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }

    Words {
        id: captionWords
        objectName: "caption"
        y: root.beside ? Math.max(number.height, linesColumn.height) : number.height
        width: root.width
        visible: text.length > 0
        text: root.caption
        kind: "soft"
        Accessible.ignored: true
    }

    Column {
        id: linesColumn
        y: root.beside ? Math.max(0, (number.height - height) / 2) : root.captionEnd
        width: root.width
        spacing: Theme.gapTiny

        // qmllint disable unqualified
        Each {
            model: root.lines

            Words {
                required property string modelData
                required property int index
                width: root.width
                text: modelData
                kind: index === 0 ? "small" : "soft"
                font.weight: index === 0 ? Font.DemiBold : Font.Normal
                horizontalAlignment: root.beside ? Text.AlignRight : Text.AlignLeft
                Accessible.ignored: true
            }
        }
        // qmllint enable unqualified
    }
}
