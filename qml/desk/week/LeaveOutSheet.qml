// SPDX-License-Identifier: MIT
// Asks why a count is left out of the picture, and says what that does.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

Sheet {
    id: root

    property string visit: ""
    property string complaint: ""

    signal given(string visit, string reason)

    function ask(visit: string): void {
        root.visit = visit;
        root.complaint = "";
        why.text = "";
        root.open();
    }

    function give(): void {
        if (why.text.trim().length === 0) {
            root.complaint = qsTr("Say why, in a few words: everybody who looks at this count reads it.");
            why.takeFocus();
            return;
        }
        root.given(root.visit, why.text);
        root.settle();
    }

    name: qsTr("Leave this count out of the picture?")
    onOpened: why.takeFocus()

    Words {
        text: root.name
        kind: "title"
        Layout.fillWidth: true
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }

    Words {
        text: qsTr("The visit stays as it is. Sums, seasons and the region leave its count out, and the nights before it are not known. You can let it count again.")
        Layout.fillWidth: true
    }

    FieldText {
        id: why
        objectName: "leaveOutWhy"
        label: qsTr("Why?")
        hint: qsTr("For example: the trap lay on its side.")
        error: root.complaint
        maximumLength: 150
        Layout.fillWidth: true
        onEdited: root.complaint = ""
        onAccepted: root.give()
    }

    InkButton {
        objectName: "leaveOutYes"
        text: qsTr("Leave it out")
        Layout.fillWidth: true
        onClicked: root.give()
    }

    PlainButton {
        objectName: "leaveOutNo"
        text: qsTr("Do not leave it out")
        Layout.fillWidth: true
        onClicked: root.close()
    }
}
