// SPDX-License-Identifier: MIT
// One member: devices, fields, and what a coordinator may say of them.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property MemberViewModel model
    property string subject

    signal opened(string route, string subject)

    title: root.model.name
    subtitle: root.model.lastDay.length > 0 ? qsTr("%1, until %2", "role, last day").arg(root.model.roleWords).arg(root.model.lastDay) : root.model.roleWords

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    SectionLabel {
        text: qsTr("Devices")
        Layout.fillWidth: true
    }

    Words {
        objectName: "noDevice"
        visible: root.model.devices.count === 0
        text: qsTr("No device of this member has come in yet.")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.devices

        DeviceCard {
            objectName: "device" + index
            mayEnd: root.model.mayChange && !struck
            mayBeRoot: root.model.mayMakeRoots && !struck
            enabled: !root.model.busy
            Layout.fillWidth: true
            onEnded: key => root.model.endDevice(key)
            onMadeRoot: key => root.model.makeRoot(key)
        }
    }

    PlainButton {
        objectName: "another"
        visible: root.model.mayChange || root.model.mayMakeRoots
        text: qsTr("Invite another device of %1").arg(root.model.name)
        Layout.fillWidth: true
        onClicked: root.opened("invite", root.subject)
    }

    SectionLabel {
        visible: root.model.sites.count > 0
        text: qsTr("Fields")
        Layout.fillWidth: true
    }

    Card {
        visible: root.model.sites.count > 0
        Layout.fillWidth: true

        Each {
            model: root.model.sites

            Words {
                required property string title
                objectName: "site"
                text: title
                Layout.fillWidth: true
            }
        }
    }

    SectionLabel {
        visible: root.model.otherSites.count > 0
        text: qsTr("Works at these fields too")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.otherSites

        ToggleRow {
            id: otherSite

            required property int index
            required property string key
            required property string title
            required property list<string> flags
            required detail
            objectName: "otherSite" + otherSite.index
            text: otherSite.title
            checked: otherSite.flags.length > 0
            enabled: !root.model.busy
            Layout.fillWidth: true
            onToggled: root.model.setWorksAt(otherSite.key, otherSite.checked)
        }
    }

    ChoiceChips {
        objectName: "role"
        visible: root.model.mayChange
        label: qsTr("Takes part as")
        keys: root.model.mayMakeRoots || root.model.role === "coordinator" ? ["grower", "agronomist", "coordinator"] : ["grower", "agronomist"]
        labels: [qsTr("grower"), qsTr("agronomist"), qsTr("coordinator")].slice(0, keys.length)
        chosen: root.model.role
        Layout.fillWidth: true
        onPicked: key => root.model.setRole(key)
    }

    FieldDay {
        id: last
        property string typed: root.model.today
        objectName: "lastDay"
        visible: root.model.mayChange
        label: qsTr("Leaves the programme after")
        hint: qsTr("What is entered for later days is kept aside. Everything before it stays.")
        day: last.typed
        today: root.model.today
        Layout.fillWidth: true
        onEdited: day => last.typed = day
    }

    PlainButton {
        objectName: "leave"
        visible: root.model.mayChange
        enabled: last.valid && !root.model.busy
        text: qsTr("This is the last day")
        Layout.fillWidth: true
        onClicked: root.model.leave(last.typed)
    }
}
