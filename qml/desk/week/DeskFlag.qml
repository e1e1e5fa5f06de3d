// SPDX-License-Identifier: MIT
// One flag: why, against what, how many good counts get it, and what can be done. It changes nothing by itself.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

Card {
    id: root

    required property DeskViewModel desk
    required property bool wide
    required property int index
    required property string title
    required property string besides
    required property string detail
    required property string subject
    required property list<string> flags
    readonly property bool isMeant: root.subject.length > 0 && root.subject === root.desk.asked

    signal opened(string route, string subject)
    signal leaveOutWanted(string visit)
    signal questionWanted(string visit)

    function takeFocus(): void {
        if (stands.visible)
            stands.forceActiveFocus(Qt.TabFocusReason);
    }

    function withKey(words: string, key: string): string {
        return root.wide && root.isMeant ? words + " · " + key : words;
    }

    objectName: "flag" + root.index

    Words {
        text: root.title
        kind: "strong"
        Layout.fillWidth: true
    }

    Words {
        objectName: "reason"
        text: root.detail
        Layout.fillWidth: true
    }

    Words {
        visible: text.length > 0
        text: root.flags.join("\n")
        kind: "small"
        Layout.fillWidth: true
    }

    Words {
        objectName: "goodCounts"
        text: root.besides
        kind: "soft"
        Layout.fillWidth: true
    }

    GridLayout {
        visible: root.subject.length > 0
        columns: root.width < 420 * Theme.textScale ? 1 : 2
        columnSpacing: Theme.gapSmall
        rowSpacing: Theme.gapSmall
        Layout.fillWidth: true

        PlainButton {
            id: stands
            objectName: "stands"
            text: root.withKey(qsTr("It stands"), "S")
            enabled: !root.desk.busy
            Layout.fillWidth: true
            onClicked: root.desk.stands(root.subject)
        }

        PlainButton {
            objectName: "correct"
            text: root.withKey(qsTr("Correct"), "C")
            Layout.fillWidth: true
            onClicked: root.opened("correct", "visit/" + root.subject)
        }

        PlainButton {
            objectName: "leaveOut"
            text: root.withKey(qsTr("Leave out"), "L")
            enabled: !root.desk.busy
            Layout.fillWidth: true
            onClicked: root.leaveOutWanted(root.subject)
        }

        PlainButton {
            objectName: "ask"
            text: root.withKey(qsTr("Ask"), "K")
            enabled: !root.desk.busy
            Layout.fillWidth: true
            onClicked: root.questionWanted(root.subject)
        }
    }
}
