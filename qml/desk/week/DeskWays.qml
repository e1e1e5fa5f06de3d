// SPDX-License-Identifier: MIT
// What a coordinator goes to from the season's page.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    property bool hasSeason: true

    signal opened(string route, string subject)

    spacing: Theme.gap

    ListCard {
        objectName: "desk"
        visible: root.hasSeason
        title: qsTr("This week’s desk")
        subtitle: qsTr("Who has reported, typing counts in, and what to look at")
        Layout.fillWidth: true
        onClicked: root.opened("desk", "")
    }

    ListCard {
        objectName: "publish"
        visible: root.hasSeason
        title: qsTr("Bulletin")
        subtitle: qsTr("The week as everybody may read it, and publishing it")
        Layout.fillWidth: true
        onClicked: root.opened("publish", "")
    }

    ListCard {
        objectName: "map"
        visible: root.hasSeason
        title: qsTr("Map")
        subtitle: qsTr("Every trap, what lies between them, and your boundaries")
        Layout.fillWidth: true
        onClicked: root.opened("map", "")
    }

    ListCard {
        objectName: "years"
        visible: root.hasSeason
        title: qsTr("Weeks and years")
        subtitle: qsTr("Districts by week, and this year against the last ones")
        Layout.fillWidth: true
        onClicked: root.opened("years", "")
    }

    ListCard {
        objectName: "temperatures"
        visible: root.hasSeason
        title: qsTr("Bring in temperatures")
        subtitle: qsTr("Days of a weather station, for the calendar and the flight")
        Layout.fillWidth: true
        onClicked: root.opened("temperatures", "")
    }

    ListCard {
        objectName: "winter"
        title: qsTr("Winter")
        subtitle: qsTr("What to order, whom to thank, and who goes on")
        Layout.fillWidth: true
        onClicked: root.opened("winter", "")
    }

    ListCard {
        objectName: "import"
        visible: root.hasSeason
        title: qsTr("Bring in past years")
        subtitle: qsTr("Counts from a spreadsheet: looked at before anything is kept, and taken back in one go")
        Layout.fillWidth: true
        onClicked: root.opened("import", "")
    }
}
