// SPDX-License-Identifier: MIT
// A coordinator's week: the table, and the chosen trap beside it; on a narrow window one after the other.
import QtQuick
import Duskrow.App
import Duskrow.Theme

FocusScope {
    id: root

    required property DeskViewModel model
    property string subject
    readonly property bool wide: root.width >= 900 * Math.max(1, Theme.textScale * 0.75)
    property bool showsTrap: false // on a narrow window
    property bool isMadeAnew: false // the lines are
    property int stood: 0 // where the keyboard stood in the lines

    signal back
    signal opened(string route, string subject)

    function choose(row: int): void {
        root.stood = row;
        root.model.choose(root.model.lines.keyAt(row), root.model.lines.trapAt(row));
    }

    function enter(row: int): void {
        root.choose(row);
        root.showsTrap = true;
        detail.focusFirst();
    }

    function toList(): void {
        root.showsTrap = false;
        if (list.list.currentItem)
            list.list.currentItem.forceActiveFocus();
        else
            list.forceActiveFocus();
    }

    // After the lines were made anew the keyboard stands where it stood, or where that line was.
    function findAgain(): void {
        const row = root.model.lines.rowOf(root.model.chosen);
        root.isMadeAnew = false;
        const wanted = row >= 0 ? row : Math.min(root.stood, root.model.lines.count - 1);
        list.list.currentIndex = wanted;
        if (wanted > 0)
            list.list.positionViewAtIndex(wanted, ListView.Contain);
        if (row < 0 && root.wide && wanted >= 0)
            root.choose(wanted);
        // What had the keyboard may be gone with the lines.
        const at = root.Window.activeFocusItem;
        if (at === root || at === list || at === list.list || (root.wide && at === detail))
            root.toList();
        else if (at === detail)
            detail.focusFirst();
    }

    function act(key: string): bool {
        const asked = root.model.asked;
        switch (key) {
        case "p":
            root.model.goWeeks(-1);
            return true;
        case "n":
            root.model.goWeeks(1);
            return true;
        case "t":
            root.opened("typing", root.model.week);
            return true;
        case "a":
            root.model.lines.markAll();
            return true;
        case "s":
            if (root.model.lines.marked > 0)
                root.model.markedStand();
            else if (asked.length > 0)
                root.model.stands(asked);
            return true;
        case "c":
            if (asked.length > 0)
                root.opened("correct", "visit/" + asked);
            return true;
        case "l":
            if (asked.length > 0)
                leaveOut.ask(asked);
            return true;
        case "k":
            if (root.model.askable.length > 0)
                question.ask(root.model.askable);
            return true;
        case "m":
            root.model.copyMessage();
            return true;
        case "w":
            if (root.model.message.length > 0)
                Qt.openUrlExternally(root.model.mail);
            return true;
        default:
            return false;
        }
    }

    focus: true
    Keys.onPressed: event => {
        if (event.modifiers === Qt.NoModifier && event.text.length === 1)
            event.accepted = root.act(event.text.toLowerCase());
    }
    Keys.onEscapePressed: {
        if (root.showsTrap || detail.activeFocus)
            root.toList();
        else
            root.back();
    }
    Keys.onBackPressed: event => {
        event.accepted = root.showsTrap && !root.wide;
        if (event.accepted)
            root.toList();
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }

    Connections {
        target: root.model.lines
        function onModelAboutToBeReset() {
            root.isMadeAnew = true;
        }
        function onModelReset() {
            Qt.callLater(root.findAgain);
        }
    }

    DeskTable {
        id: list
        objectName: "table"
        focus: true
        visible: root.wide || !root.showsTrap
        width: root.wide ? Math.round(root.width * 0.52) : root.width
        height: root.height
        desk: root.model
        wide: root.wide
        onBack: root.back()
        onOpened: (route, subject) => root.opened(route, subject)
        onChosen: row => {
            if (!root.isMadeAnew)
                root.choose(row);
        }
        onEntered: row => root.enter(row)
    }

    Rectangle {
        visible: root.wide
        x: list.width
        width: Theme.hairline
        height: root.height
        color: Theme.line
    }

    DeskDetail {
        id: detail
        objectName: "detail"
        visible: root.wide || root.showsTrap
        anchors.right: parent.right
        width: root.wide ? root.width - list.width - Theme.hairline : root.width
        height: root.height
        desk: root.model
        wide: root.wide
        onBack: root.toList()
        onOpened: (route, subject) => root.opened(route, subject)
        onLeaveOutWanted: visit => leaveOut.ask(visit)
        onQuestionWanted: visit => question.ask(visit)
    }

    LeaveOutSheet {
        id: leaveOut
        objectName: "leaveOut"
        onGiven: (visit, reason) => root.model.leaveOut(visit, reason)
    }

    QuestionSheet {
        id: question
        objectName: "question"
        desk: root.model
    }
}
