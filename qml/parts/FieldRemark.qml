// SPDX-License-Identifier: MIT
// Several lines of text, for a remark; it grows with what is typed.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Duskrow.Theme

ColumnLayout {
    id: root

    required property string label
    property alias text: area.text
    readonly property bool isTyping: area.activeFocus
    property int maximumLength: 10000
    property string error: ""
    property string hint: ""

    signal edited(string text)

    spacing: Theme.gapTiny

    FieldLabel {
        text: root.label
        hint: root.hint
        Layout.fillWidth: true
    }

    T.TextArea {
        id: area
        objectName: "box"
        padding: Theme.padding
        implicitWidth: 120
        implicitHeight: Math.max(2 * Theme.touch, contentHeight + topPadding + bottomPadding)
        color: Theme.ink
        font.family: Theme.family
        font.pixelSize: Theme.typeBody
        selectByMouse: true
        selectedTextColor: Theme.nextInk
        selectionColor: Theme.next
        textFormat: TextEdit.PlainText
        wrapMode: TextEdit.Wrap
        Layout.fillWidth: true
        // Only what the person types is reported, not what the caller sets.
        onTextChanged: {
            if (area.length > root.maximumLength)
                area.remove(root.maximumLength, area.length);
            else if (area.activeFocus)
                root.edited(area.text);
        }

        Accessible.role: Accessible.EditableText
        Accessible.name: root.label
        Accessible.description: root.error || root.hint
        Accessible.multiLine: true

        // Tab leaves the field, as everywhere else.
        KeyNavigation.priority: KeyNavigation.BeforeItem
        Keys.onTabPressed: area.nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
        Keys.onBacktabPressed: area.nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)

        background: Rectangle {
            radius: Theme.radiusSmall
            color: Theme.card
            border.width: area.activeFocus ? Theme.ring : root.error.length > 0 ? 2 : Theme.hairline
            border.color: root.error.length > 0 ? Theme.inkError : area.activeFocus ? Theme.focus : Theme.edge
        }
    }

    FieldError {
        text: root.error
        Layout.fillWidth: true
    }
}
