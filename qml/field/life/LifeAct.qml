// SPDX-License-Identifier: MIT
// The frame of one act on a trap: what is entered, the day it was done, and keeping it.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property LifeViewModel model
    readonly property LifeForm form: root.model.form
    property string keepText: qsTr("Keep it")
    property string dayLabel: qsTr("Done on")
    property bool dayShown: true
    property bool canKeep: true
    property bool keepVisible: true
    property alias pinnedExtra: extra.data
    default property alias entries: column.data

    focus: true
    subtitle: root.model.title

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    ColumnLayout {
        id: column
        spacing: root.spacing
        Layout.fillWidth: true
    }

    FieldDay {
        id: doneOn
        objectName: "day"
        visible: root.dayShown
        label: root.dayLabel
        day: root.form.day
        today: root.model.today
        Layout.fillWidth: true
        onEdited: day => root.form.day = day
    }

    pinned: [
        ColumnLayout {
            id: extra
            visible: !root.keepVisible
            Layout.fillWidth: true
        },
        ActButton {
            objectName: "keep"
            visible: root.keepVisible
            text: root.keepText
            enabled: root.canKeep && doneOn.valid && !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.keep()
        }
    ]
}
