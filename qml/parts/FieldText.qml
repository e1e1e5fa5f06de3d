// SPDX-License-Identifier: MIT
// A line of text with its label above and, where something is wrong, one sentence below.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property string label
    property alias text: box.text
    property alias placeholder: placeholder.text
    property alias maximumLength: box.maximumLength
    property alias inputMethodHints: box.inputMethodHints
    property alias echoMode: box.echoMode
    property string error: ""
    property string hint: ""

    signal edited(string text)
    signal accepted

    function takeFocus(): void {
        box.forceActiveFocus(Qt.TabFocusReason);
    }

    spacing: Theme.gapTiny

    FieldLabel {
        text: root.label
        hint: root.hint
        Layout.fillWidth: true
    }

    EntryBox {
        id: box
        objectName: "box"
        bad: root.error.length > 0
        maximumLength: 200
        Layout.fillWidth: true
        onTextEdited: root.edited(box.text)
        onAccepted: root.accepted()

        Accessible.name: root.label
        Accessible.description: root.error || root.hint

        Words {
            id: placeholder
            anchors.fill: parent
            anchors.leftMargin: box.leftPadding
            anchors.rightMargin: box.rightPadding
            visible: box.length === 0 && box.preeditText.length === 0
            color: Theme.inkSoft
            elide: Text.ElideRight
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }

    FieldError {
        text: root.error
        Layout.fillWidth: true
    }
}
