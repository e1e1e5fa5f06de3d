// SPDX-License-Identifier: MIT
// Asks whoever has the trap about a count: in ready words, or in those of the coordinator.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

Sheet {
    id: root

    required property DeskViewModel desk
    property string visit: ""

    function ask(visit: string): void {
        root.visit = visit;
        words.error = "";
        words.text = root.desk.readyWords(visit);
        root.open();
    }

    function give(): void {
        if (words.text.trim().length === 0) {
            words.error = qsTr("Say what you would like to know.");
            return;
        }
        root.desk.askAbout(root.visit, words.text);
        root.settle();
    }

    name: qsTr("Ask %1 about this count?").arg(root.desk.whoIsAsked(root.visit))
    onOpened: send.forceActiveFocus(Qt.TabFocusReason)

    Words {
        text: root.name
        kind: "title"
        Layout.fillWidth: true
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }

    Words {
        text: qsTr("The question goes along with the next exchange and stands on Today there. The count stays as it is.")
        Layout.fillWidth: true
    }

    FieldRemark {
        id: words
        objectName: "questionWords"
        label: qsTr("The question")
        maximumLength: 1000
        Layout.fillWidth: true
        onEdited: words.error = ""
    }

    InkButton {
        id: send
        objectName: "questionYes"
        text: qsTr("Ask")
        enabled: !root.desk.busy
        Layout.fillWidth: true
        onClicked: root.give()
    }

    PlainButton {
        objectName: "questionNo"
        text: qsTr("Not now")
        Layout.fillWidth: true
        onClicked: root.close()
    }
}
