// SPDX-License-Identifier: MIT
// What all buttons share: a wrapping label, a large target, Space and Enter, a ring for the keyboard.
import QtQuick
import QtQuick.Templates as T
import Duskrow.Theme

T.Button {
    id: root

    property color fill: Theme.card
    property color fillPressed: Theme.cardPressed
    property color words: Theme.ink
    property color edge: Theme.line
    property int edgeWidth: Theme.hairline
    property int corner: Theme.radius
    property int leastHeight: Theme.touchWide

    implicitWidth: Math.max(Theme.touch, implicitContentWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(root.leastHeight, implicitContentHeight + topPadding + bottomPadding)
    horizontalPadding: Theme.padding
    verticalPadding: Theme.gapSmall
    focusPolicy: Qt.StrongFocus
    font.family: Theme.family
    font.pixelSize: Theme.typeBody
    font.weight: Font.DemiBold

    Accessible.name: root.text
    Accessible.role: Accessible.Button
    Accessible.onPressAction: root.clicked()

    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        radius: root.corner
        color: !root.enabled ? Theme.groundNote : root.down ? root.fillPressed : root.fill
        border.width: root.enabled ? root.edgeWidth : 0
        border.color: root.edge

        FocusRing {
            shown: root.visualFocus
            inner: root.corner
        }
    }

    contentItem: Text {
        text: root.text
        color: root.enabled ? root.words : Theme.inkSoft
        font: root.font
        horizontalAlignment: Text.AlignHCenter
        lineHeight: Theme.lineHeight
        textFormat: Text.PlainText
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.Wrap
    }
}
