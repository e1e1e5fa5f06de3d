// SPDX-License-Identifier: MIT
// A band as a coloured tab with one to four filled dots, and its name. Band 0 is "not known": hatched.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property int band
    required property string name
    readonly property int outOf: 4
    readonly property bool known: root.band >= 1 && root.band <= root.outOf
    readonly property color dotColour: root.known ? Theme.bandInks[root.band - 1] : Theme.ink
    readonly property real dot: Math.round(10 * Math.min(Theme.textScale, 1.4))

    function spoken(): string {
        return qsTr("%1, band %2 of %3").arg(root.name).arg(root.band).arg(root.outOf);
    }

    implicitWidth: tab.width + Theme.gapSmall + words.implicitWidth
    implicitHeight: Math.max(tab.height, words.implicitHeight)

    Accessible.role: Accessible.StaticText
    Accessible.name: root.known ? root.spoken() : root.name

    Rectangle {
        id: tab
        y: Math.max(0, (Math.min(words.height, words.firstLine) - height) / 2)
        width: dots.implicitWidth + 2 * root.dot
        height: Math.round(root.dot * 2.4)
        radius: height / 2
        color: root.known ? Theme.bands[root.band - 1] : Theme.card
        border.width: Theme.hairline
        border.color: Theme.edge
        clip: true

        Hatch {
            visible: !root.known
            anchors.fill: parent
            anchors.margins: Theme.gapTiny
        }

        Row {
            id: dots
            anchors.centerIn: parent
            spacing: Math.round(root.dot / 2)

            // qmllint disable unqualified
            Each {
                model: root.outOf

                Rectangle {
                    required property int index
                    width: root.dot
                    height: root.dot
                    radius: width / 2
                    visible: root.known
                    color: index < root.band ? root.dotColour : "transparent"
                    border.width: 1.5
                    border.color: root.dotColour
                }
            }
            // qmllint enable unqualified
        }
    }

    Words {
        id: words
        readonly property real firstLine: Math.ceil(font.pixelSize * 1.4)
        x: tab.width + Theme.gapSmall
        width: root.width - x
        text: root.name
        kind: "strong"
        Accessible.ignored: true
    }
}
