// SPDX-License-Identifier: MIT
// One thing in a list: title, what about it, a word at the right; a yellow bar and a word where it is due.
import QtQuick
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
    property bool strikeout: false // no longer holds; the subtitle says why
    default property alias extra: extraColumn.data
    readonly property string dueWords: root.due ? root.dueWord : ""
    readonly property string between: root.dueWords && root.rightText ? " · " : ""
    readonly property string rightWords: root.dueWords + root.between + root.rightText
    readonly property real chevronRoom: root.chevron ? chevronMark.width + Theme.gap : 0
    readonly property real rightWidth: measure.width(root.rightWords, Theme.typeSmall) + Theme.gap
    readonly property real titleWidth: measure.width(root.title, Theme.typeBody)
    readonly property real titleNeed: Math.min(root.titleWidth, 150 * Theme.textScale)
    readonly property bool rightShown: root.beside && root.rightWords.length > 0
    readonly property real columnWidth: root.availableWidth - root.chevronRoom - (root.rightShown ? root.rightWidth : 0)
    readonly property real rightEnd: root.rightPadding + root.chevronRoom
    readonly property bool beside: root.availableWidth - root.chevronRoom - root.rightWidth >= root.titleNeed

    function listed(words: string): string {
        return words.length > 0 ? ", " + words : "";
    }

    implicitWidth: 280
    implicitHeight: Math.max(Theme.touchWide, column.implicitHeight + topPadding + bottomPadding)
    leftPadding: Theme.padding + Theme.gapTiny
    rightPadding: Theme.padding
    verticalPadding: Theme.padding
    focusPolicy: Qt.StrongFocus

    Accessible.role: Accessible.Button
    Accessible.name: root.title + root.listed(root.rightWords) + root.listed(root.subtitle)
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

    Column {
        id: column
        x: root.mirrored ? root.width - width - root.leftPadding : root.leftPadding
        anchors.verticalCenter: parent.verticalCenter
        width: root.columnWidth
        spacing: Theme.gapTiny

        Words {
            objectName: "title"
            width: column.width
            text: root.title
            kind: "strong"
            font.strikeout: root.strikeout
            Accessible.ignored: true
        }

        Words {
            objectName: "subtitle"
            width: column.width
            visible: text.length > 0
            text: root.subtitle
            kind: "soft"
            Accessible.ignored: true
        }

        Words {
            width: column.width
            visible: !root.beside && text.length > 0
            text: root.rightWords
            kind: "small"
            font.weight: Font.DemiBold
            Accessible.ignored: true
        }

        Column {
            id: extraColumn
            width: column.width
            visible: children.length > 0
            spacing: Theme.gapTiny
        }
    }

    Words {
        id: rightLabel
        objectName: "right"
        x: root.mirrored ? root.rightEnd : root.width - root.rightEnd - width
        anchors.verticalCenter: parent.verticalCenter
        visible: root.rightShown
        text: root.rightWords
        kind: "small"
        font.strikeout: root.strikeout
        font.weight: Font.DemiBold
        wrapMode: Text.NoWrap
        Accessible.ignored: true
    }

    Chevron {
        id: chevronMark
        x: root.mirrored ? root.rightPadding : root.width - root.rightPadding - width
        anchors.verticalCenter: parent.verticalCenter
        visible: root.chevron
        colour: Theme.edge
    }
}
