// SPDX-License-Identifier: MIT
// What a coordinator goes to from the season's page.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    signal opened(string route, string subject)

    spacing: Theme.gap

    ListCard {
        objectName: "desk"
        title: qsTr("This week’s desk")
        subtitle: qsTr("Who has reported, typing counts in, and what to look at")
        Layout.fillWidth: true
        onClicked: root.opened("desk", "")
    }

    ListCard {
        objectName: "publish"
        title: qsTr("Bulletin")
        subtitle: qsTr("The week as everybody may read it, and publishing it")
        Layout.fillWidth: true
        onClicked: root.opened("publish", "")
    }

    ListCard {
        objectName: "map"
        title: qsTr("Map")
        subtitle: qsTr("Every trap, what lies between them, and your boundaries")
        Layout.fillWidth: true
        onClicked: root.opened("map", "")
    }

    ListCard {
        objectName: "years"
        title: qsTr("Weeks and years")
        subtitle: qsTr("Districts by week, and this year against the last ones")
        Layout.fillWidth: true
        onClicked: root.opened("years", "")
    }

    ListCard {
        objectName: "import"
        title: qsTr("Bring in past years")
        subtitle: qsTr("Counts from a spreadsheet: looked at before anything is kept, and taken back in one go")
        Layout.fillWidth: true
        onClicked: root.opened("import", "")
    }
}
