// SPDX-License-Identifier: MIT
// Above the lines: which week, which lines, districts, and typing in.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property DeskViewModel desk
    required property bool wide

    signal opened(string route, string subject)

    function withKey(words: string, key: string): string {
        return root.wide ? words + " · " + key : words;
    }

    function withCount(words: string, count: int): string {
        return count > 0 ? words + " " + count.toLocaleString(Qt.locale(), "f", 0) : words;
    }

    spacing: Theme.gap

    NoticeBar {
        objectName: "trouble"
        visible: root.desk.trouble.length > 0
        kind: "caution"
        text: root.desk.trouble
        Layout.fillWidth: true
    }

    GridLayout {
        columns: root.width < 320 * Theme.textScale ? 1 : 2
        columnSpacing: Theme.gapSmall
        rowSpacing: Theme.gapSmall
        Layout.fillWidth: true

        PlainButton {
            objectName: "weekBefore"
            text: root.withKey(qsTr("Week before"), "P")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onClicked: root.desk.goWeeks(-1)
        }

        PlainButton {
            objectName: "weekAfter"
            text: root.withKey(qsTr("Week after"), "N")
            enabled: root.desk.canGoOn
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onClicked: root.desk.goWeeks(1)
        }
    }

    PlainButton {
        objectName: "typeIn"
        text: root.withKey(qsTr("Type in counts"), "T")
        enabled: root.desk.isRead
        Layout.fillWidth: true
        onClicked: root.opened("typing", root.desk.week)
    }

    ChoiceChips {
        objectName: "views"
        label: qsTr("Which lines")
        labelShown: false
        keys: ["traps", "late", "flags", "new"]
        //: lines of the desk; a number may follow each
        labels: [qsTr("Traps"), root.withCount(qsTr("Late"), root.desk.late), root.withCount(qsTr("To look at"), root.desk.flagged), root.withCount(qsTr("New"), root.desk.cameIn)]
        chosen: root.desk.view
        Layout.fillWidth: true
        onPicked: key => root.desk.view = key
    }

    Words {
        objectName: "checking"
        visible: root.desk.isChecking && root.desk.view === "flags"
        text: qsTr("The records are being looked through.")
        kind: "soft"
        Layout.fillWidth: true
    }

    Words {
        objectName: "nothing"
        visible: root.desk.isRead && root.desk.lines.count === 0 && !(root.desk.isChecking && root.desk.view === "flags")
        text: root.desk.view === "flags" ? qsTr("Nothing to look at.") : root.desk.view === "late" ? qsTr("Nobody is late.") : root.desk.view === "new" ? qsTr("Nothing came in since you last looked.") : qsTr("No trap is expected to report for this week.")
        Layout.fillWidth: true
    }

    Words {
        visible: root.wide && root.desk.view === "flags" && root.desk.flagged > 0
        text: qsTr("Space marks a line, A all of them, S says that they stand.")
        kind: "soft"
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "looked"
        visible: root.desk.view === "new" && root.desk.cameIn > 0
        text: qsTr("I have seen these")
        Layout.fillWidth: true
        onClicked: root.desk.looked()
    }

    Card {
        objectName: "districts"
        visible: root.desk.view === "traps" && root.desk.districts.count > 1
        Layout.fillWidth: true

        Each {
            model: root.desk.districts

            FactRow {
                required property string title
                required property string besides
                label: title
                value: besides
                Layout.fillWidth: true
            }
        }
    }
}
