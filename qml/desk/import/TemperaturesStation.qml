// SPDX-License-Identifier: MIT
// Which station the temperatures are of, where it stands, and when its day ends.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property TemperaturesViewModel model

    spacing: Theme.gap

    SectionLabel {
        text: qsTr("The weather station")
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "stations"
        visible: root.model.stations.length > 0
        label: qsTr("One that is known")
        keys: root.model.stations
        labels: root.model.stations
        chosen: root.model.station
        Layout.fillWidth: true
        onPicked: key => root.model.choose("station", key)
    }

    FieldText {
        objectName: "station"
        label: qsTr("Its name")
        text: root.model.station
        maximumLength: 80
        Layout.fillWidth: true
        onEdited: text => root.model.choose("station", text)
    }

    FieldText {
        objectName: "latitude"
        label: qsTr("Latitude")
        hint: qsTr("Fields take the nearest station. As 52.1579, or with minutes; empty where it is known already.")
        text: root.model.latitude
        maximumLength: 40
        inputMethodHints: Qt.ImhNoPredictiveText
        Layout.fillWidth: true
        onEdited: text => root.model.choose("latitude", text)
    }

    FieldText {
        objectName: "longitude"
        label: qsTr("Longitude")
        text: root.model.longitude
        maximumLength: 40
        inputMethodHints: Qt.ImhNoPredictiveText
        Layout.fillWidth: true
        onEdited: text => root.model.choose("longitude", text)
    }

    FieldText {
        objectName: "dayEnds"
        label: qsTr("Its day ends at")
        hint: qsTr("00:00, or 09:00 where it is read at nine. Kept with the station and said beside every sum.")
        text: root.model.dayEnds
        maximumLength: 10
        inputMethodHints: Qt.ImhNoPredictiveText
        Layout.fillWidth: true
        onEdited: text => root.model.choose("dayEnds", text)
    }
}
