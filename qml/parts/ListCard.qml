// SPDX-License-Identifier: MIT
// One thing in a list: title, what about it, a word at the right; a yellow bar and a word where it is due.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Duskrow.Theme

T.Button {
    id: root

    required property string title
    property string subtitle: ""
    property string rightText: ""
    property bool due: false
    property string dueWord: qsTr("due")
    property bool chevron: true
    default property alias extra: extraColumn.data
    readonly property string dueWords: root.due ? root.dueWord : ""
    readonly property string rightWords: root.dueWords + (root.dueWords && root.rightText ? " · " : "") + root.rightText
    readonly property real roomForRight: root.availableWidth - measure.width(root.rightWords, Theme.typeSmall) - chevronMark.width - 2
                                         * Theme.gap
    readonly property bool beside: root.roomForRight >= Math.min(measure.width(root.title, Theme.typeBody), 150 * Theme.textScale)

    implicitWidth: 280
    implicitHeight: Math.max(Theme.touchWide, row.implicitHeight + topPadding + bottomPadding)
    leftPadding: Theme.padding + Theme.gapTiny
    rightPadding: Theme.padding
    verticalPadding: Theme.padding
    focusPolicy: Qt.StrongFocus

    Accessible.role: Accessible.Button
    Accessible.name: root.title + (root.rightWords ? ", " + root.rightWords : "") + (root.subtitle ? ", " + root.subtitle : "")
    Accessible.onPressAction: root.clicked()

    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    Measure {
        id: measure
    }

    background: Rectangle {
        radius: Theme.radius
        color: root.down ? Theme.cardPressed : Theme.card
        border.width: Theme.hairline
        border.color: Theme.line

        Rectangle {
            visible: root.due
            x: root.mirrored ? parent.width - width : 0
            anchors.verticalCenter: parent.verticalCenter
            width: Theme.bar + 2
            height: parent.height - 2 * Theme.radius
            radius: width / 2
            color: Theme.next
        }

        FocusRing {
            shown: root.visualFocus
        }
    }

    RowLayout {
        id: row
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.leftMargin: root.leftPadding
        anchors.rightMargin: root.rightPadding
        spacing: Theme.gap

        ColumnLayout {
            spacing: Theme.gapTiny
            Layout.fillWidth: true

            Words {
                objectName: "title"
                text: root.title
                kind: "strong"
                Layout.fillWidth: true
                Accessible.ignored: true
            }

            Words {
                objectName: "subtitle"
                visible: text.length > 0
                text: root.subtitle
                kind: "soft"
                Layout.fillWidth: true
                Accessible.ignored: true
            }

            Words {
                visible: !root.beside && text.length > 0
                text: root.rightWords
                kind: "small"
                font.weight: Font.DemiBold
                Layout.fillWidth: true
                Accessible.ignored: true
            }

            ColumnLayout {
                id: extraColumn
                visible: children.length > 0
                spacing: Theme.gapTiny
                Layout.fillWidth: true
            }
        }

        Words {
            objectName: "right"
            visible: root.beside && text.length > 0
            text: root.rightWords
            kind: "small"
            font.weight: Font.DemiBold
            wrapMode: Text.NoWrap
            Layout.alignment: Qt.AlignVCenter
            Accessible.ignored: true
        }

        Chevron {
            id: chevronMark
            visible: root.chevron
            colour: Theme.edge
            Layout.alignment: Qt.AlignVCenter
        }
    }
}
