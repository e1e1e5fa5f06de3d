// SPDX-License-Identifier: MIT
// A message to whoever has not reported, ready to be sent by the device's own programs.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

Card {
    id: root

    required property DeskViewModel desk
    required property bool wide

    function takeFocus(): void {
        mail.forceActiveFocus(Qt.TabFocusReason);
    }

    Words {
        text: qsTr("Nothing has come in. A message to send:")
        kind: "strong"
        Layout.fillWidth: true
    }

    Words {
        objectName: "message"
        text: root.desk.message
        kind: "small"
        Layout.fillWidth: true
    }

    PlainButton {
        id: mail
        objectName: "mail"
        text: qsTr("Write it as e-mail") + (root.wide ? " · W" : "")
        Layout.fillWidth: true
        onClicked: Qt.openUrlExternally(root.desk.mail)
    }

    PlainButton {
        objectName: "copy"
        text: (root.desk.copied ? qsTr("Copied") : qsTr("Copy the text")) + (root.wide ? " · M" : "")
        Layout.fillWidth: true
        onClicked: root.desk.copyMessage()
    }
}
