// SPDX-License-Identifier: MIT
// A published week, with the reader's own district on top.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property NewsViewModel model
    property string subject

    signal opened(string route, string subject)

    title: root.model.isFound ? root.model.title : qsTr("Bulletin")
    subtitle: root.model.isFound ? root.model.besides : ""

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    Words {
        objectName: "none"
        visible: !root.model.isFound
        text: qsTr("No bulletin has come yet this season. It comes with an exchange, once a coordinator has published a week.")
        Layout.fillWidth: true
    }

    Repeater {
        model: root.model.own

        AreaCard {
            required property string besides
            required property string detail
            objectName: "own"
            lines: detail.length > 0 ? [besides, detail] : [besides]
            isOwn: true
            Layout.fillWidth: true
        }
    }

    Words {
        objectName: "text"
        visible: root.model.isFound
        text: root.model.text
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "caution"
        visible: root.model.isFound
        kind: "caution"
        text: qsTr("A trap catch never decides a spray. Fields beside each other differ: look for larvae in your own, read the label, and follow local rules and your licensed adviser.")
        Layout.fillWidth: true
    }

    SectionLabel {
        visible: root.model.others.count > 0
        text: qsTr("Others")
        Layout.fillWidth: true
    }

    Repeater {
        model: root.model.others

        AreaCard {
            required property string besides
            required property string detail
            objectName: "other"
            lines: detail.length > 0 ? [besides, detail] : [besides]
            Layout.fillWidth: true
        }
    }

    SectionLabel {
        visible: root.model.weeks.count > 0
        text: qsTr("Weeks before")
        Layout.fillWidth: true
    }

    Repeater {
        model: root.model.weeks

        ListCard {
            required property string detail
            required property string route
            required property string subject
            objectName: "week"
            subtitle: detail
            Layout.fillWidth: true
            onClicked: root.opened(route, subject)
        }
    }
}
