// SPDX-License-Identifier: MIT
// Counts that came in by voice, message or paper, typed row by row: Enter keeps one and goes to the next.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ListFrame {
    id: root

    required property TypingViewModel typing
    property string subject

    function go(row: int): void {
        if (row < 0 || row >= root.typing.rows.count)
            return;
        root.list.currentIndex = row;
        root.list.positionViewAtIndex(row, ListView.Contain);
        const entry = root.list.itemAtIndex(row) as TypingEntry;
        if (entry)
            entry.takeFocus();
    }

    // What is kept has no box any more: the next that has one.
    function goOn(from: int, by: int): void {
        for (let row = from + by; row >= 0 && row < root.typing.rows.count; row += by) {
            root.go(row);
            const entry = root.list.itemAtIndex(row) as TypingEntry;
            if (entry && entry.isOpen)
                return;
        }
    }

    title: qsTr("Type in counts")
    subtitle: root.typing.isRead ? qsTr("%1 · typed by %2").arg(root.typing.weekLine).arg(root.typing.typist) : ""
    canGoBack: true
    maximumWidth: 2 * Theme.contentWidth
    model: root.typing.rows
    sectionRole: "section"
    Component.onCompleted: {
        root.list.spacing = 0;
        root.list.cacheBuffer = 400;
        root.list.reuseItems = false;
    }
    Keys.onEscapePressed: root.back()

    delegate: TypingEntry {
        width: root.columnWidth
        height: implicitHeight
        onCountTyped: words => root.typing.typeCount(index, words)
        onWhoTyped: words => root.typing.typeWho(index, words)
        reasonKeys: root.typing.reasonKeys
        reasonLabels: root.typing.reasonLabels
        // A row that grows at the lower edge is brought into view.
        onAsksWhyChanged: Qt.callLater(() => root.list.positionViewAtIndex(index, ListView.Contain))
        onMoved: by => root.goOn(index, by)
        onNoCount: reason => {
            if (root.typing.keepNoCount(index, reason))
                root.goOn(index, 1);
        }
        onAccepted: {
            if (root.typing.keep(index))
                root.goOn(index, 1);
            else
                takeFocus();
        }
    }

    Connections {
        target: root.typing
        function onShown() {
            Qt.callLater(root.goOn, -1, 1);
        }
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.typing.trouble.length > 0
        kind: "caution"
        text: root.typing.trouble
        Layout.fillWidth: true
    }

    GridLayout {
        readonly property bool beside: root.columnWidth >= 700 * Theme.textScale
        columns: beside ? 2 : 1
        columnSpacing: Theme.gapWide
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        FieldDay {
            objectName: "day"
            label: qsTr("Day of the visits")
            day: root.typing.day
            today: root.typing.today
            error: root.typing.dayError
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop
            onEdited: day => root.typing.day = day
        }

        ColumnLayout {
            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop

            ChoiceChips {
                objectName: "how"
                label: qsTr("How they were reported")
                keys: root.typing.howKeys
                labels: root.typing.howLabels
                chosen: root.typing.how
                Layout.fillWidth: true
                onPicked: key => root.typing.how = key
            }

            ChoiceChips {
                objectName: "emptied"
                label: qsTr("Were the traps emptied?")
                keys: ["yes", "no", "unsaid"]
                labels: [qsTr("yes"), qsTr("no"), qsTr("nobody said")]
                chosen: root.typing.emptied
                Layout.fillWidth: true
                onPicked: key => root.typing.emptied = key
            }
        }
    }

    Words {
        objectName: "hint"
        visible: root.typing.rows.count > 0
        text: qsTr("Enter keeps a count and goes to the next trap; arrows go up and down, Tab to who reported. Day and way stay as they are.")
        kind: "soft"
        Layout.fillWidth: true
    }

    EmptyState {
        objectName: "nobody"
        visible: root.typing.isRead && root.typing.rows.count === 0
        title: qsTr("Everybody has reported")
        text: qsTr("For this week no trap waits for a count.")
        Layout.fillWidth: true
    }
}
