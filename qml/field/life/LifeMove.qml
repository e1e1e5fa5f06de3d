// SPDX-License-Identifier: MIT
// The trap is moved: its new place, by averaged fixes or typed, and how far that is from the old one.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

LifeAct {
    id: root

    readonly property PlaceViewModel place: root.form.place
    readonly property bool measuring: !root.place.isFound && !root.place.typing

    title: qsTr("Move the trap")
    canKeep: root.place.isFound
    keepVisible: root.place.isFound
    Component.onCompleted: root.place.measure()

    BigNumber {
        objectName: "distance"
        visible: root.place.isFound
        value: root.place.coordinates
        caption: root.place.origin
        lines: [root.model.moved]
        Layout.fillWidth: true
    }

    BigNumber {
        objectName: "accuracy"
        visible: root.measuring
        value: root.place.accuracy || "–"
        caption: root.place.accuracy ? qsTr("metres: the new place is known this well") : qsTr("Waiting for the first fix, under the open sky")
        lines: root.place.accuracy ? [root.place.fixWords, root.place.settled ? qsTr("settled") : qsTr("still settling")] : []
        Layout.fillWidth: true
    }

    NoticeBar {
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
        visible: !root.place.isFound && (root.place.receiving || !root.place.typing)
        text: root.place.typing ? qsTr("Measure instead") : qsTr("Type the coordinates instead")
        Layout.fillWidth: true
        onClicked: root.place.typing = !root.place.typing
    }

    PlainButton {
        objectName: "again"
        visible: root.place.isFound
        text: qsTr("Find the place again")
        Layout.fillWidth: true
        onClicked: root.place.again()
    }

    pinnedExtra: ActButton {
        objectName: "takePlace"
        visible: !root.place.isFound
        enabled: root.place.typing || root.place.accuracy.length > 0
        text: qsTr("It stands here now")
        Layout.fillWidth: true
        onClicked: root.place.take()
    }
}
