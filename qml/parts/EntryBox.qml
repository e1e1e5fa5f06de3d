// SPDX-License-Identifier: MIT
// The bare box one types into; FieldText, FieldNumber and FieldDay put label and sentence around it.
import QtQuick
import QtQuick.Templates as T
import Duskrow.Theme

T.TextField {
    id: root

    property bool bad: false

    implicitWidth: 120
    implicitHeight: Math.max(Theme.touchWide, contentHeight + topPadding + bottomPadding)
    leftPadding: Theme.padding
    rightPadding: Theme.padding
    topPadding: Theme.gapSmall
    bottomPadding: Theme.gapSmall
    color: Theme.ink
    font.family: Theme.family
    font.pixelSize: Theme.typeBody
    placeholderTextColor: Theme.inkSoft
    selectByMouse: true
    selectedTextColor: Theme.nextInk
    selectionColor: Theme.next
    verticalAlignment: TextInput.AlignVCenter

    Accessible.role: Accessible.EditableText

    background: Rectangle {
        radius: Theme.radiusSmall
        color: Theme.card
        border.width: root.activeFocus ? Theme.ring : root.bad ? 2 : Theme.hairline
        border.color: root.bad ? Theme.inkError : root.activeFocus ? Theme.focus : Theme.edge
    }
}
