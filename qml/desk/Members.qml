// SPDX-License-Identifier: MIT
// Who takes part, with which devices; a coordinator invites from here.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property MembersViewModel model
    property string subject

    signal opened(string route, string subject)

    title: qsTr("Members and devices")

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "secondRoot"
        visible: root.model.needsSecondRoot
        kind: "caution"
        title: qsTr("Only this device can name coordinators")
        text: qsTr("If it is lost, nobody can any more. Invite a second coordinator, or another device of yours, and make it a main device too.")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.members

        ListCard {
            required property int index
            required property string besides
            required property string detail
            required property string route
            required property string subject
            required property list<string> flags
            objectName: "member" + index
            rightText: besides
            subtitle: [detail].concat(flags).join("\n")
            Layout.fillWidth: true
            onClicked: root.opened(route, subject)
        }
    }

    SectionLabel {
        visible: root.model.invited.count > 0
        text: qsTr("Invited, not here yet")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.invited

        Card {
            id: invited

            required property int index
            required property string key
            required property string title
            required property string detail
            objectName: "invited" + invited.index
            Layout.fillWidth: true

            Words {
                text: invited.title
                kind: "strong"
                Layout.fillWidth: true
            }

            Words {
                text: invited.detail
                kind: "soft"
                Layout.fillWidth: true
            }

            PlainButton {
                objectName: "takeBack"
                visible: root.model.isCoordinator
                text: qsTr("Take the invitation back")
                Layout.fillWidth: true
                onClicked: root.model.takeBack(invited.key)
            }
        }
    }

    pinned: [
        ActButton {
            objectName: "invite"
            visible: root.model.isCoordinator
            text: qsTr("Invite somebody")
            Layout.fillWidth: true
            onClicked: root.opened("invite", "")
        }
    ]
}
