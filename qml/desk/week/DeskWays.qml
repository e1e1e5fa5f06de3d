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
        objectName: "import"
        title: qsTr("Bring in past years")
        subtitle: qsTr("Counts from a spreadsheet: looked at before anything is kept, and taken back in one go")
        Layout.fillWidth: true
        onClicked: root.opened("import", "")
    }
}
