// SPDX-License-Identifier: MIT
// One who kept traps: what was kept, whether he goes on, and his thanks as a message.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

Item {
    id: root

    required property WinterViewModel winter
    required property int index
    required property string key
    required property string title
    required property string detail
    required property list<string> flags
    property bool sendingFailed: false

    objectName: "cooperator" + root.index
    implicitHeight: card.implicitHeight

    Card {
        id: card
        width: root.width
        height: implicitHeight

        Words {
            objectName: "name"
            text: root.title
            kind: "strong"
            Layout.fillWidth: true
        }

        Words {
            objectName: "kept"
            text: root.detail
            kind: "soft"
            Layout.fillWidth: true
        }

        ChoiceChips {
            objectName: "goesOn"
            label: qsTr("In %1").arg(root.winter.nextYear)
            keys: ["yes", "no", "unsaid"]
            labels: [qsTr("Goes on"), qsTr("Does not"), qsTr("Has not said")]
            chosen: root.flags[0] || "unsaid"
            Layout.fillWidth: true
            onPicked: key => root.winter.say(root.key, key === "unsaid" ? "" : key)
        }

        GridLayout {
            columns: root.width < 340 * Theme.textScale ? 1 : 2
            columnSpacing: Theme.gapSmall
            rowSpacing: Theme.gapSmall
            Layout.fillWidth: true

            PlainButton {
                objectName: "copyThanks"
                text: root.winter.copied === root.key ? qsTr("Copied") : qsTr("Copy the thanks")
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                onClicked: root.winter.copyThanks(root.key)
            }

            PlainButton {
                objectName: "mailThanks"
                text: qsTr("E-mail them")
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                onClicked: root.sendingFailed = !Qt.openUrlExternally(root.winter.mailAddress(root.key))
            }
        }

        NoticeBar {
            objectName: "nobodyTakesIt"
            visible: root.sendingFailed
            kind: "caution"
            text: qsTr("Nothing on this device takes it. Copy the text instead, and paste it where you write.")
            Layout.fillWidth: true
        }
    }
}
