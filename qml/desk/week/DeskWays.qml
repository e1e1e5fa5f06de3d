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
}
