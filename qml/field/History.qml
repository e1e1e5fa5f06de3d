// SPDX-License-Identifier: MIT
// The history of one record, newest change first, and the ways to set it right: correct, withdraw, let it stand.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property string subject
    required property HistoryViewModel model
    readonly property bool stands: root.model.withdrawn.length === 0

    signal opened(string route, string subject)

    title: root.model.title
    subtitle: root.model.subtitle

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0 && !withdrawing.visible
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "withdrawn"
        visible: !root.stands
        kind: "caution"
        title: qsTr("Withdrawn")
        text: root.model.withdrawn
        Layout.fillWidth: true
    }

    Words {
        objectName: "marks"
        visible: text.length > 0
        text: root.model.marks.join("\n")
        kind: "small"
        Layout.fillWidth: true
    }

    SectionLabel {
        visible: root.model.isFound
        text: qsTr("History, newest first")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.changes

        HistoryCard {
            required property int index
            objectName: "change" + index
            Layout.fillWidth: true
        }
    }

    Words {
        visible: root.model.isFound
        text: qsTr("Nothing is ever deleted: a correction stands beside what it corrects.")
        kind: "soft"
        Layout.fillWidth: true
    }

    WithdrawSheet {
        id: withdrawing
        objectName: "withdrawSheet"
        model: root.model
    }

    pinned: [
        ActButton {
            objectName: "correct"
            visible: root.model.correctRoute.length > 0
            text: qsTr("Correct it")
            Layout.fillWidth: true
            onClicked: root.opened(root.model.correctRoute, root.model.correctSubject)
        },
        PlainButton {
            objectName: "withdraw"
            visible: root.model.isFound && root.stands
            text: qsTr("Withdraw it")
            enabled: !root.model.busy
            Layout.fillWidth: true
            onClicked: withdrawing.open()
        },
        ActButton {
            objectName: "bringBack"
            visible: !root.stands
            text: qsTr("Let it stand again")
            enabled: !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.bringBack()
        }
    ]
}
