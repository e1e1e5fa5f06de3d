// SPDX-License-Identifier: MIT
// A carried file before anything of it is taken in: what it would bring, and from whom.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property CarriedViewModel model
    property string subject

    title: root.model.fileName
    subtitle: root.model.programme

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    ProgressPanel {
        objectName: "progress"
        visible: root.model.exchanger.running
        text: root.model.exchanger.doing
        part: root.model.exchanger.part
        Layout.fillWidth: true
        onStopped: root.model.exchanger.stop()
    }

    NoticeBar {
        objectName: "taken"
        visible: root.model.taken.length > 0
        kind: "kept"
        text: root.model.taken
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "caution"
        visible: root.model.caution.length > 0
        kind: "caution"
        text: root.model.caution
        Layout.fillWidth: true
    }

    SumCard {
        objectName: "newEntries"
        visible: root.model.isRead && root.model.isOurs && root.model.taken.length === 0
        count: root.model.newEntries
        word: root.model.newEntries === 0 ? qsTr("new entries: all of it is here already") : root.model.newEntries === 1 ? qsTr("new entry") : qsTr("new entries")
        Layout.fillWidth: true
    }

    Card {
        visible: root.model.from.count > 0
        Layout.fillWidth: true

        Each {
            model: root.model.from

            FactRow {
                required property int index
                required property string title
                required property string besides
                objectName: "from" + index
                label: title
                value: besides
                Layout.fillWidth: true
            }
        }
    }

    pinned: [
        ActButton {
            objectName: "takeIn"
            visible: root.model.isOurs && root.model.newEntries > 0
            text: qsTr("Take it in")
            enabled: !root.model.exchanger.running
            Layout.fillWidth: true
            onClicked: root.model.takeIn()
        },
        PlainButton {
            objectName: "leaveIt"
            text: root.model.taken.length > 0 ? qsTr("Done") : qsTr("Leave it")
            Layout.fillWidth: true
            onClicked: root.back()
        }
    ]
}
