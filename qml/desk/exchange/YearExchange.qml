// SPDX-License-Identifier: MIT
// The ways from the season to the others who take part: exchange, members, what is to be decided, joining.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    property int questions: 0 // that wait for this coordinator
    property bool isJoined: false

    signal opened(string route, string subject)

    spacing: Theme.gap

    SectionLabel {
        text: qsTr("With others")
        Layout.fillWidth: true
    }

    ListCard {
        objectName: "exchange"
        title: qsTr("Exchange")
        subtitle: qsTr("By a folder, one file or a hub")
        Layout.fillWidth: true
        onClicked: root.opened("exchange", "")
    }

    ListCard {
        objectName: "differences"
        title: qsTr("Differences")
        subtitle: root.questions > 0 ? qsTr("Two values for the same, proposals, and what was kept aside") : qsTr("Nothing waits for you")
        rightText: root.questions > 0 ? String(root.questions) : ""
        due: root.questions > 0
        dueWord: ""
        Layout.fillWidth: true
        onClicked: root.opened("differences", "")
    }

    ListCard {
        objectName: "members"
        title: qsTr("Members and devices")
        subtitle: qsTr("Who takes part, and inviting")
        Layout.fillWidth: true
        onClicked: root.opened("members", "")
    }

    ListCard {
        objectName: "join"
        visible: !root.isJoined
        title: qsTr("Join a programme by a code")
        subtitle: qsTr("What you kept alone can come along")
        Layout.fillWidth: true
        onClicked: root.opened("join", "")
    }
}
