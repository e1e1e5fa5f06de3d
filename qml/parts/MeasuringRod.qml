// SPDX-License-Identifier: MIT
// The rod at the side of the stake picture: a tick each ten centimetres, a number each fifty.
import QtQuick
import Duskrow.Theme

Rectangle {
    id: root

    required property real perMm
    property string unit: ""
    readonly property int ticks: Math.floor(root.height / (100 * root.perMm))
    // In large type only every second number has room.
    readonly property int numberEvery: 500 * root.perMm > Theme.typeSmall * 1.3 ? 5 : 10

    width: Math.ceil(measure.width("100", Theme.typeSmall)) + 22
    color: Theme.card

    Measure {
        id: measure
    }

    // qmllint disable unqualified
    Each {
        model: root.ticks

        Item {
            id: tick

            required property int index
            readonly property int tens: tick.index + 1
            readonly property bool numbered: tick.tens % root.numberEvery === 0
            y: root.height - tick.tens * 100 * root.perMm
            width: root.width

            Rectangle {
                anchors.right: parent.right
                anchors.verticalCenter: parent.verticalCenter
                width: tick.numbered ? 14 : tick.tens % 5 === 0 ? 11 : 7
                height: tick.numbered ? 2 : 1
                color: Theme.ink
            }

            Words {
                anchors.right: parent.right
                anchors.rightMargin: 18
                anchors.verticalCenter: parent.verticalCenter
                visible: tick.numbered && tick.y > height / 2
                text: tick.tens * 10
                kind: "small"
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }

    // qmllint enable unqualified
    Words {
        x: Theme.gapTiny
        anchors.bottom: parent.bottom
        text: root.unit
        kind: "soft"
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }
}
