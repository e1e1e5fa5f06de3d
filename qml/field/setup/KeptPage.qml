// SPDX-License-Identifier: MIT
// Set-up: done, and what comes next.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

SetupPage {
    id: root

    signal anotherWanted

    NoticeBar {
        objectName: "kept"
        kind: "kept"
        title: root.model.title
        text: qsTr("The trap is kept on this device.")
        Layout.fillWidth: true
    }

    NextCard {
        objectName: "whatNext"
        model: root.model
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "stillOpen"
        visible: root.model.stillOpen.length > 0
        kind: "caution"
        text: root.model.stillOpen
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "lateness"
        visible: root.model.lateness.length > 0
        text: root.model.lateness
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "another"
        text: qsTr("Another trap at this field")
        Layout.fillWidth: true
        onClicked: root.anotherWanted()
    }
}
