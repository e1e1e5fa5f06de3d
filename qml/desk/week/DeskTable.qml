// SPDX-License-Identifier: MIT
// The week in lines: every trap, or what is late, to be looked at, or new. One stop of the keyboard; arrows move within.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ListFrame {
    id: root

    required property DeskViewModel desk
    required property bool wide

    signal opened(string route, string subject)
    signal chosen(int row)
    signal entered(int row)

    title: qsTr("This week’s desk")
    subtitle: root.desk.isRead ? root.desk.weekLine + " · " + root.desk.totalLine : root.desk.totalLine
    canGoBack: true
    maximumWidth: root.wide ? 2 * Theme.contentWidth : Theme.contentWidth
    model: root.desk.lines
    sectionRole: root.desk.view === "traps" || root.desk.view === "late" ? "section" : ""
    Component.onCompleted: {
        root.list.focus = true;
        root.list.highlightMoveDuration = 0;
        root.list.spacing = Theme.gapSmall;
    }
    Keys.onReturnPressed: root.entered(root.list.currentIndex)
    Keys.onEnterPressed: root.entered(root.list.currentIndex)
    Keys.onSpacePressed: root.desk.lines.toggle(root.list.currentIndex)

    Connections {
        target: root.list
        function onCurrentIndexChanged() {
            if (root.list.currentIndex >= 0 && root.list.activeFocus)
                root.chosen(root.list.currentIndex);
        }
    }

    delegate: DeskRow {
        width: root.columnWidth
        height: implicitHeight
        isCurrent: ListView.isCurrentItem
        wide: root.wide
        onEntered: {
            root.list.currentIndex = index;
            root.entered(index);
        }
        onToggled: root.desk.lines.toggle(index)
    }

    DeskHead {
        desk: root.desk
        wide: root.wide
        Layout.fillWidth: true
        onOpened: (route, subject) => root.opened(route, subject)
    }

    pinned: [
        ActButton {
            objectName: "markedStand"
            visible: root.desk.lines.marked > 0
            enabled: !root.desk.busy
            text: (root.desk.lines.marked === 1 ? qsTr("It stands: the one marked") : qsTr("They stand: %1 marked").arg(root.desk.lines.marked)) + (root.wide ? " · S" : "")
            Layout.fillWidth: true
            onClicked: root.desk.markedStand()
        }
    ]
}
