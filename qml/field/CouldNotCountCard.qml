// SPDX-License-Identifier: MIT
// Says that no number is kept for this visit, and why.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

Card {
    id: root

    required property string words

    signal again

    Words {
        objectName: "couldNotTitle"
        text: qsTr("Could not count")
        kind: "title"
        Layout.fillWidth: true
    }

    Words {
        objectName: "couldNotWords"
        text: root.words
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "countAfterAll"
        text: qsTr("Count after all")
        Layout.fillWidth: true
        onClicked: root.again()
    }
}
