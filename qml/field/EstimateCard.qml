// SPDX-License-Identifier: MIT
// In place of the tally where the count was estimated from parts.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

Card {
    id: root

    required property string words

    signal changeWanted
    signal countWanted

    Words {
        objectName: "estimateWords"
        text: root.words
        Layout.fillWidth: true
    }

    InkButton {
        objectName: "changeEstimate"
        text: qsTr("Look at the counted parts")
        Layout.fillWidth: true
        onClicked: root.changeWanted()
    }

    PlainButton {
        objectName: "countEach"
        text: qsTr("Count one by one instead")
        Layout.fillWidth: true
        onClicked: root.countWanted()
    }
}
