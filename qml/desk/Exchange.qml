// SPDX-License-Identifier: MIT
// The exchange: how far the own entries got, what waits, the ways and what the last exchange came to.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property ExchangeViewModel model
    property string subject
    property string joinedLine: ""
    property bool isWaiting: false // joined, and the records are not here yet

    signal opened(string route, string subject)

    Component.onDestruction: root.model.leave()

    title: root.isWaiting ? qsTr("You have joined") : qsTr("Exchange")
    subtitle: root.model.next

    NoticeBar {
        objectName: "waitingNote"
        visible: root.isWaiting
        text: qsTr("The records of the programme are not here yet. Exchange by the way the invitation came, or open a file from the coordinator. If nothing comes, the coordinator has to let this device in first.")
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "joinedLine"
        visible: root.joinedLine.length > 0
        kind: "kept"
        text: root.joinedLine
        Layout.fillWidth: true
    }

    GridLayout {
        columns: Theme.textScale > 1.3 ? 1 : 3
        columnSpacing: Theme.gapSmall
        rowSpacing: Theme.gapSmall
        Layout.fillWidth: true

        SumCard {
            objectName: "here"
            count: root.model.here
            word: qsTr("on this phone")
            strong: root.model.here > 0
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 1
        }

        SumCard {
            objectName: "handedOver"
            count: root.model.handedOver
            word: qsTr("handed over")
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 1
        }

        SumCard {
            objectName: "atHub"
            count: root.model.atHub
            word: qsTr("at the hub")
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredWidth: 1
        }
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
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    ListCard {
        objectName: "aside"
        visible: root.model.asideLine.length > 0
        title: root.model.asideLine
        Layout.fillWidth: true
        onClicked: root.opened("differences", "")
    }

    Each {
        model: root.model.waiting

        NoticeBar {
            required property int index
            required property string key
            required property string detail
            objectName: "waiting" + index
            text: detail.length > 0 ? key + ". " + detail : key
            Layout.fillWidth: true
        }
    }

    ExchangeWays {
        model: root.model
        Layout.fillWidth: true
    }

    ExchangeFile {
        model: root.model
        Layout.fillWidth: true
        onOpened: (route, subject) => root.opened(route, subject)
    }

    pinned: [
        ActButton {
            objectName: "exchangeNow"
            text: qsTr("Exchange now")
            visible: root.model.ways.count > 0
            enabled: !root.model.exchanger.running
            Layout.fillWidth: true
            onClicked: root.model.exchanger.exchange()
        }
    ]
}
