// SPDX-License-Identifier: MIT
// The verdict in large words with a drawn sign, and what to do next. verdict: "below", "above", "too_close" or
// nothing while it is open. Read aloud in the order a person would say it.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

Rectangle {
    id: root

    required property string verdict
    required property string title
    required property string mean
    required property string range
    required property string next
    // Below the line, on it, above it.
    readonly property real level: root.verdict === "above" ? 0.15 : root.verdict === "below" ? 0.85 : 0.5

    function spoken(): string {
        let words = root.title;
        for (const part of [root.mean, root.range, root.next]) {
            if (part.length > 0)
                words += (words.length > 0 ? ". " : "") + part;
        }
        return words;
    }

    implicitWidth: 280
    implicitHeight: column.implicitHeight + 2 * Theme.gapWide
    radius: Theme.radius
    color: Theme.act

    Accessible.role: Accessible.Grouping
    Accessible.name: root.spoken()

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.gapWide
        spacing: Theme.gapTiny

        Item {
            visible: root.title.length > 0
            implicitHeight: Math.max(mark.height, title.implicitHeight)
            Layout.fillWidth: true

            Item {
                id: mark
                anchors.verticalCenter: parent.verticalCenter
                width: 34
                height: 40

                Rectangle {
                    y: (mark.height - height) / 2
                    width: mark.width
                    height: 3
                    color: Theme.next
                }

                Rectangle {
                    x: (mark.width - width) / 2
                    y: root.level * (mark.height - height)
                    width: 14
                    height: 14
                    radius: 7
                    color: Theme.actInk
                    border.width: root.verdict === "too_close" ? 3 : 0
                    border.color: Theme.act
                }
            }

            Words {
                id: title
                objectName: "verdictTitle"
                anchors.verticalCenter: parent.verticalCenter
                x: mark.width + Theme.gap
                width: parent.width - x
                text: root.title
                kind: "heading"
                color: Theme.actInk
                Accessible.ignored: true
            }
        }

        Words {
            objectName: "verdictMean"
            visible: text.length > 0
            text: root.mean
            kind: "head"
            color: Theme.actInk
            Layout.fillWidth: true
            Accessible.ignored: true
        }

        Words {
            objectName: "verdictRange"
            visible: text.length > 0
            text: root.range
            kind: "small"
            color: Theme.actInkSoft
            Layout.fillWidth: true
            Accessible.ignored: true
        }

        Words {
            objectName: "verdictNext"
            visible: text.length > 0
            text: root.next
            kind: "small"
            color: Theme.next
            font.weight: Font.DemiBold
            Layout.fillWidth: true
            Accessible.ignored: true
        }
    }
}
