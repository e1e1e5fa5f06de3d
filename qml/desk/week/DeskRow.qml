// SPDX-License-Identifier: MIT
// One line of the desk, and beside it the mark where several can be settled at once.
import QtQuick
import Duskrow.Parts
import Duskrow.Theme

Item {
    id: root

    required property int index
    required property string title
    required property string besides
    required property string amount
    required property string remark
    required property bool due
    required property bool isNew
    required property bool canMark
    required property bool marked
    property bool isCurrent: false
    property bool wide: false

    signal entered
    signal toggled

    objectName: "line" + root.index
    activeFocusOnTab: root.isCurrent || root.activeFocus
    implicitHeight: Math.max(card.implicitHeight, mark.visible ? mark.implicitHeight : 0)

    ListCard {
        id: card
        objectName: "card"
        title: root.title
        subtitle: [root.besides, root.remark].filter(words => words.length > 0).join("\n")
        rightText: (root.isNew ? qsTr("new") + (root.amount ? " · " : "") : "") + root.amount
        due: root.due
        dueWord: ""
        chevron: !root.wide
        focusPolicy: Qt.NoFocus
        width: root.width - (mark.visible ? mark.width + Theme.gapSmall : 0)
        height: root.height
        onClicked: root.entered()

        Binding {
            target: card.background
            property: "border.width"
            value: root.isCurrent && !root.activeFocus && root.wide ? 2 : Theme.hairline
        }

        Binding {
            target: card.background
            property: "border.color"
            value: root.isCurrent && root.wide ? Theme.ink : Theme.line
        }
    }

    PressButton {
        id: mark
        objectName: "mark"
        visible: root.canMark
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        focusPolicy: Qt.NoFocus
        text: root.marked ? qsTr("marked") : qsTr("mark")
        fill: root.marked ? Theme.act : Theme.card
        fillPressed: root.marked ? Theme.actPressed : Theme.cardPressed
        words: root.marked ? Theme.actInk : Theme.ink
        font.weight: root.marked ? Font.Bold : Font.Medium
        horizontalPadding: Theme.gap
        onClicked: root.toggled()

        Accessible.role: Accessible.CheckBox
        Accessible.checkable: true
        Accessible.checked: root.marked
        Accessible.name: qsTr("Mark %1").arg(root.title)
    }

    FocusRing {
        shown: root.isCurrent && root.activeFocus
        gap: -Theme.ring
    }
}
