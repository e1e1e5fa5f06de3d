// SPDX-License-Identifier: MIT
// The trap that is chosen: its week, what to look at and how to settle it, a message where it is late, its visits.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property DeskViewModel desk
    required property bool wide
    readonly property bool isChosen: root.desk.trap.length > 0 || root.desk.flags.count > 0

    signal opened(string route, string subject)
    signal leaveOutWanted(string visit)
    signal questionWanted(string visit)

    function focusFirst(): void {
        if (root.desk.flags.count > 0 && flags.itemAt(0))
            (flags.itemAt(0) as DeskFlag).takeFocus();
        else if (root.desk.questions.count > 0 && questions.itemAt(0))
            (questions.itemAt(0) as DeskQuestion).takeFocus();
        else if (late.visible)
            late.takeFocus();
        else
            season.forceActiveFocus(Qt.TabFocusReason);
    }

    title: root.desk.title.length > 0 ? root.desk.title : root.desk.flags.count > 0 ? qsTr("To look at") : root.wide ? "" : qsTr("No trap is chosen")
    canGoBack: !root.wide

    EmptyState {
        objectName: "noneChosen"
        visible: root.wide && !root.isChosen
        title: qsTr("Choose a line")
        text: qsTr("Arrow keys move in the list; Enter goes to what can be done, Escape back to the list.")
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapWide
    }

    Repeater {
        id: questions
        model: root.desk.questions

        DeskQuestion {
            desk: root.desk
            Layout.fillWidth: true
        }
    }

    Repeater {
        id: flags
        model: root.desk.flags

        DeskFlag {
            desk: root.desk
            wide: root.wide
            Layout.fillWidth: true
            onOpened: (route, subject) => root.opened(route, subject)
            onLeaveOutWanted: visit => root.leaveOutWanted(visit)
            onQuestionWanted: visit => root.questionWanted(visit)
        }
    }

    LateCard {
        id: late
        objectName: "late"
        desk: root.desk
        wide: root.wide
        visible: root.desk.message.length > 0
        Layout.fillWidth: true
    }

    Card {
        visible: root.desk.facts.count > 0
        Layout.fillWidth: true

        Repeater {
            model: root.desk.facts

            FactRow {
                required property string title
                required property string besides
                label: title
                value: besides
                Layout.fillWidth: true
            }
        }
    }

    PlainButton {
        objectName: "askAbout"
        visible: root.desk.askable.length > 0 && root.desk.flags.count === 0
        text: qsTr("Ask about the count of %1").arg(root.desk.askableDay) + (root.wide ? " · K" : "")
        Layout.fillWidth: true
        onClicked: root.questionWanted(root.desk.askable)
    }

    SectionLabel {
        visible: root.desk.visits.count > 0
        text: qsTr("Visits, the latest first")
        Layout.fillWidth: true
    }

    Repeater {
        model: root.desk.visits

        DeskVisit {
            desk: root.desk
            Layout.fillWidth: true
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    PlainButton {
        id: season
        objectName: "season"
        visible: root.desk.trap.length > 0
        text: qsTr("The season of this trap")
        Layout.fillWidth: true
        onClicked: root.opened("season", root.desk.trap)
    }
}
