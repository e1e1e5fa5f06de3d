// SPDX-License-Identifier: MIT
// Set-up: where the trap stands, by averaged fixes or typed.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

SetupPage {
    id: root

    readonly property PlaceViewModel place: root.model.place
    readonly property bool measuring: !root.place.isFound && !root.place.typing

    Card {
        objectName: "found"
        visible: root.place.isFound
        Layout.fillWidth: true

        Words {
            text: qsTr("The trap stands here")
            kind: "soft"
            Layout.fillWidth: true
        }

        Words {
            objectName: "coordinates"
            text: root.place.coordinates
            kind: "title"
            Layout.fillWidth: true
        }

        Words {
            objectName: "origin"
            text: root.place.origin
            kind: "small"
            Layout.fillWidth: true
        }
    }

    BigNumber {
        objectName: "accuracy"
        visible: root.measuring
        value: root.place.accuracy || "–"
        caption: root.place.accuracy ? qsTr("metres: the place is known this well") : qsTr("Waiting for the first fix, under the open sky")
        lines: root.place.accuracy ? [root.place.fixWords, root.place.settled ? qsTr("settled") : qsTr("still settling")] : []
        Layout.fillWidth: true
    }

    Words {
        visible: root.measuring && root.place.accuracy.length > 0
        text: root.place.settled ? qsTr("Waiting longer would hardly help.") : qsTr(
                                       "Stand where the trap will stand and wait, or use the place as it is.")
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "noReceiver"
        visible: !root.place.receiving && !root.place.isFound
        text: qsTr("This device finds no position by itself. Type the coordinates, or name a position log in the settings.")
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "latitude"
        visible: !root.place.isFound && root.place.typing
        label: qsTr("Latitude")
        hint: qsTr("For example 52.15790")
        text: root.place.latitude
        error: root.place.typedError
        Layout.fillWidth: true
        onEdited: text => root.place.latitude = text
    }

    FieldText {
        objectName: "longitude"
        visible: !root.place.isFound && root.place.typing
        label: qsTr("Longitude")
        hint: qsTr("West has a minus: -106.67020")
        text: root.place.longitude
        Layout.fillWidth: true
        onEdited: text => root.place.longitude = text
    }

    PlainButton {
        objectName: "typeOrMeasure"
        visible: !root.place.isFound && root.place.receiving
        text: root.place.typing ? qsTr("Measure instead") : qsTr("Type the coordinates instead")
        Layout.fillWidth: true
        onClicked: root.place.typing = !root.place.typing
    }

    PlainButton {
        objectName: "again"
        visible: root.place.isFound
        text: root.place.typing ? qsTr("Change it") : qsTr("Measure again")
        Layout.fillWidth: true
        onClicked: root.place.again()
    }
}
