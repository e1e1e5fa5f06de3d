// SPDX-License-Identifier: MIT
// Before a walk: which field, and how far its crop is.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property WalkStartViewModel model
    property string subject

    signal replaced(string route, string subject)

    title: qsTr("Scout a field")
    subtitle: root.model.frameLine

    Connections {
        target: root.model
        function onBegan(walk) {
            root.replaced("frames", walk);
        }
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "search"
        visible: root.model.hasSites && root.model.moreSites.length > 0
        label: qsTr("Find a field")
        text: root.model.search
        maximumLength: 100
        Layout.fillWidth: true
        onEdited: text => root.model.search = text
    }

    ChoiceChips {
        objectName: "site"
        visible: root.model.hasSites
        label: qsTr("Field")
        keys: root.model.siteKeys
        labels: root.model.siteNames
        chosen: root.model.site
        Layout.fillWidth: true
        onPicked: key => root.model.site = key
    }

    Words {
        visible: text.length > 0
        text: root.model.moreSites
        kind: "soft"
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "name"
        visible: root.model.site.length === 0
        label: qsTr("Name of the field")
        text: root.model.name
        maximumLength: 200
        Layout.fillWidth: true
        onEdited: text => root.model.name = text
    }

    NoticeBar {
        objectName: "goOn"
        visible: text.length > 0
        text: root.model.goOnLine
        action: qsTr("Go on with it")
        Layout.fillWidth: true
        onActed: root.replaced("frames", root.model.goOnWith)
    }

    StageList {
        objectName: "stage"
        visible: root.model.stageKeys.length > 0
        label: qsTr("Crop stage, by the %1").arg(root.model.scale)
        keys: root.model.stageKeys
        labels: root.model.stageNames
        chosen: root.model.stage
        Layout.fillWidth: true
        onPicked: key => root.model.stage = key === root.model.stage ? "" : key
    }

    NoticeBar {
        objectName: "stageLine"
        visible: text.length > 0
        text: root.model.stageLine
        Layout.fillWidth: true
    }

    ToggleRow {
        objectName: "drySeason"
        text: qsTr("A very dry season")
        detail: qsTr("A note. Whether it lowers your threshold is asked when you decide.")
        checked: root.model.drySeason
        Layout.fillWidth: true
        onToggled: root.model.drySeason = checked
    }

    pinned: [
        ActButton {
            objectName: "begin"
            text: root.model.stage.length > 0 ? qsTr("Begin: the first frame") : qsTr("Begin without a crop stage")
            enabled: root.model.canBegin && !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.begin()
        }
    ]
}
