// SPDX-License-Identifier: MIT
// What was asked of a record of this trap, and what came back. It stands here until a coordinator settles it.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

Card {
    id: root

    required property DeskViewModel desk
    required property int index
    required property string key
    required property string title
    required property string besides
    required property string detail

    function takeFocus(): void {
        settled.forceActiveFocus(Qt.TabFocusReason);
    }

    objectName: "question" + root.index

    Words {
        objectName: "asked"
        text: root.title
        kind: "soft"
        Layout.fillWidth: true
    }

    Words {
        objectName: "words"
        text: root.detail
        Layout.fillWidth: true
    }

    Words {
        objectName: "answered"
        text: root.besides
        kind: "strong"
        Layout.fillWidth: true
    }

    PlainButton {
        id: settled
        objectName: "settled"
        text: qsTr("The question is settled")
        enabled: !root.desk.busy
        Layout.fillWidth: true
        onClicked: root.desk.settle(root.key)
    }
}
