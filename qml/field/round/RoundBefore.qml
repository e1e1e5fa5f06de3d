// SPDX-License-Identifier: MIT
// What to think of before one goes, and a message to somebody who waits.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Field
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property RoundViewModel model
    property bool sendingFailed: false

    function handOver(): void {
        root.sendingFailed = !Qt.openUrlExternally(root.model.backBy.url);
    }

    spacing: Theme.gap

    SentenceList {
        objectName: "reminders"
        title: qsTr("Before you go")
        sentences: root.model.coolBoxLine.length > 0 ? [root.model.coolBoxLine, ...root.model.reminders] : root.model.reminders
        Layout.fillWidth: true
    }

    SectionLabel {
        text: qsTr("Back by")
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "backBy"
        label: qsTr("Time")
        text: root.model.backBy.time
        error: root.model.backBy.error
        maximumLength: 20
        inputMethodHints: Qt.ImhPreferNumbers | Qt.ImhNoPredictiveText
        Layout.fillWidth: true
        onEdited: text => root.model.backBy.time = text
    }

    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        PlainButton {
            objectName: "sooner"
            text: qsTr("−30 minutes")
            Accessible.name: qsTr("30 minutes sooner")
            width: Math.min(implicitWidth, parent.width)
            onClicked: root.model.backBy.shift(-30)
        }

        PlainButton {
            objectName: "later"
            text: qsTr("+30 minutes")
            Accessible.name: qsTr("30 minutes later")
            width: Math.min(implicitWidth, parent.width)
            onClicked: root.model.backBy.shift(30)
        }
    }

    Words {
        objectName: "gone"
        visible: text.length > 0
        text: root.model.backBy.remark
        kind: "small"
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "phone"
        label: qsTr("Telephone of whoever waits")
        hint: qsTr("May be left empty: the phone then asks for whom.")
        text: root.model.backBy.phone
        maximumLength: 40
        inputMethodHints: Qt.ImhDialableCharactersOnly
        Layout.fillWidth: true
        onEdited: text => root.model.backBy.phone = text
    }

    Card {
        visible: root.model.backBy.message.length > 0
        Layout.fillWidth: true

        Words {
            objectName: "message"
            text: root.model.backBy.message
            Layout.fillWidth: true
        }
    }

    Words {
        text: qsTr("Nothing is sent from here, and nobody is followed: the phone's own messages open with these words, and you send them.")
        kind: "soft"
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "noMessages"
        visible: root.sendingFailed
        kind: "caution"
        text: qsTr("No messages on this device take it. Read the words out to somebody instead.")
        Layout.fillWidth: true
    }

    InkButton {
        objectName: "handOver"
        text: qsTr("Hand to the phone's messages")
        enabled: root.model.backBy.message.length > 0
        Layout.fillWidth: true
        onClicked: root.handOver()
    }
}
