// SPDX-License-Identifier: MIT
// Words upon a picture, on a dark ground of their own so that they can be read over anything.
import QtQuick
import Duskrow.Theme

Rectangle {
    id: root

    required property string text
    property bool caution: false
    property real maximumWidth: 1000
    readonly property real wanted: measure.width(root.text, Theme.typeSmall) + words.x + Theme.gap + 1

    width: Math.min(root.maximumWidth, root.wanted)
    height: words.implicitHeight + 2 * Theme.gapTiny
    radius: Math.min(height / 2, Theme.radius)
    visible: root.text.length > 0
    color: root.caution ? Theme.next : Theme.pill

    Measure {
        id: measure
    }

    SignMark {
        id: sign
        x: Theme.gapSmall
        anchors.verticalCenter: parent.verticalCenter
        visible: root.caution
        kind: "caution"
        colour: Theme.nextInk
        ground: Theme.next
        scale: 0.8
    }

    Words {
        id: words
        x: root.caution ? sign.x + sign.width + Theme.gapTiny : Theme.gap
        y: Theme.gapTiny
        width: root.width - x - Theme.gap
        text: root.text
        kind: "small"
        color: root.caution ? Theme.nextInk : Theme.skyInk
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }
}
