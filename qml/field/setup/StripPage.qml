// SPDX-License-Identifier: MIT
// Set-up: the killing strip, after its cautions and after the lure.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

SetupPage {
    id: root

    readonly property SetupTrap trap: root.model.trap
    readonly property bool lureFirst: !root.trap.mayTakeStrip

    NoticeBar {
        objectName: "lureFirst"
        visible: root.lureFirst
        kind: "question"
        text: qsTr("The lure goes in first, so that gloves which held the strip never come near it.")
        action: qsTr("Back to the lure")
        Layout.fillWidth: true
        onActed: root.model.goBack()
    }

    NoticeBar {
        objectName: "stripCautions"
        kind: "caution"
        title: qsTr("Before you open it")
        text: root.trap.stripCautions.join("\n")
        Layout.fillWidth: true
    }

    TrapPicture {
        description: qsTr("The trap cut open; the killing strip lies on the floor of the bucket")
        highlight: "strip"
        label: qsTr("The killing strip, on the floor of the bucket")
        Layout.fillWidth: true
    }

    Words {
        visible: text.length > 0
        text: root.trap.stripPlace
        Layout.fillWidth: true
    }

    Words {
        text: qsTr("Then take these gloves off. Fresh ones for anything after.")
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "withoutStrip"
        visible: !root.lureFirst
        text: root.trap.stripIn ? qsTr("The strip is not in after all") : qsTr("Go on without the strip")
        Layout.fillWidth: true
        onClicked: root.model.leaveOut()
    }
}
