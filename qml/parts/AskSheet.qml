// SPDX-License-Identifier: MIT
// A question over the page with up to three answers. Escape and a touch outside mean the safe one.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

Sheet {
    id: root

    required property string title
    required property string safeText
    property string text: ""
    property string yesText: ""
    property string otherText: ""

    signal yes
    signal other

    name: root.title
    onOpened: safeButton.forceActiveFocus(Qt.PopupFocusReason)

    Words {
        objectName: "title"
        text: root.title
        kind: "title"
        Layout.fillWidth: true
        Accessible.role: Accessible.Heading
        Accessible.name: root.title
    }

    Words {
        objectName: "text"
        visible: text.length > 0
        text: root.text
        Layout.fillWidth: true
        Layout.bottomMargin: Theme.gapSmall
    }

    InkButton {
        objectName: "yes"
        visible: text.length > 0
        text: root.yesText
        Layout.fillWidth: true
        onClicked: {
            root.settle();
            root.yes();
        }
    }

    PlainButton {
        objectName: "other"
        visible: text.length > 0
        text: root.otherText
        Layout.fillWidth: true
        onClicked: {
            root.settle();
            root.other();
        }
    }

    PlainButton {
        id: safeButton
        objectName: "safe"
        text: root.safeText
        focus: true
        Layout.fillWidth: true
        onClicked: root.close()
    }
}
