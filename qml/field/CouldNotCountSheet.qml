// SPDX-License-Identifier: MIT
// Why the trap could not be counted.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

Sheet {
    id: root

    required property list<string> keys
    required property list<string> labels

    signal picked(string reason)

    name: qsTr("Could not count")
    onOpened: chips.forceActiveFocus(Qt.PopupFocusReason)

    Words {
        text: qsTr("Why could it not be counted?")
        kind: "title"
        Layout.fillWidth: true
    }

    Words {
        text: qsTr("The visit is kept without a number. That is neither zero nor a missed week.")
        kind: "small"
        Layout.fillWidth: true
    }

    ChoiceChips {
        id: chips
        objectName: "reasons"
        label: qsTr("Why")
        labelShown: false
        keys: root.keys
        labels: root.labels
        onPicked: key => {
            root.settle();
            root.picked(key);
        }
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "safe"
        text: qsTr("Go back to counting")
        Layout.fillWidth: true
        onClicked: root.close()
    }
}
