// SPDX-License-Identifier: MIT
// What is needed now and then while counting.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

Sheet {
    id: root

    property bool canCount: true
    property bool correcting: false

    signal couldNot
    signal heavy
    signal over

    name: qsTr("Other")
    onOpened: heavyButton.forceActiveFocus(Qt.PopupFocusReason)

    Words {
        text: qsTr("Other")
        kind: "title"
        Layout.fillWidth: true
    }

    PlainButton {
        id: heavyButton
        objectName: "heavy"
        text: qsTr("A heavy catch: count a part of it")
        Layout.fillWidth: true
        onClicked: {
            root.settle();
            root.heavy();
        }
    }

    PlainButton {
        objectName: "couldNot"
        visible: root.canCount
        text: qsTr("It could not be counted")
        Layout.fillWidth: true
        onClicked: {
            root.settle();
            root.couldNot();
        }
    }

    PlainButton {
        objectName: "startOver"
        text: root.correcting ? qsTr("Start over: back to what is kept") : qsTr("Start this visit over")
        Layout.fillWidth: true
        onClicked: {
            root.settle();
            root.over();
        }
    }

    PlainButton {
        objectName: "safe"
        text: qsTr("Go back to counting")
        Layout.fillWidth: true
        onClicked: root.close()
    }
}
