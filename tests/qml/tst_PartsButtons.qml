// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Duskrow.Parts

Item {
    id: stage

    width: 360
    height: 640

    Component {
        id: act
        ActButton {
            text: "Next"
        }
    }
    Component {
        id: ink
        InkButton {
            text: "Count now"
        }
    }
    Component {
        id: plain
        PlainButton {
            text: "None caught"
        }
    }
    Component {
        id: listCard
        ListCard {
            width: 340
            title: "Slough corner"
            subtitle: "7 nights"
            rightText: "8 m"
            due: true
        }
    }
    Component {
        id: toggle
        ToggleRow {
            width: 340
            text: "The trap was emptied"
            detail: "The next count starts from now"
        }
    }
    Component {
        id: chips
        ChoiceChips {
            width: 340
            label: "Reason"
            keys: ["fallen", "flooded", "gone"]
            labels: ["Fallen", "Flooded", "Gone"]
            chosen: "fallen"
        }
    }
    Component {
        id: tabs
        TabRow {
            width: 340
            keys: ["today", "traps"]
            labels: ["Today", "Traps"]
            current: "today"
        }
    }
    Component {
        id: notice
        NoticeBar {
            width: 340
            kind: "question"
            text: "Is it right?"
            action: "Look again"
        }
    }
    Component {
        id: empty
        EmptyState {
            width: 340
            title: "No trap yet"
            action: "Set up a trap"
        }
    }
    SignalSpy {
        id: spy
    }

    TestCase {
        name: "PartsButtons"
        when: windowShown

        function listen(target, signalName) {
            spy.clear();
            spy.signalName = signalName;
            spy.target = target;
        }

        function cleanup() {
            spy.target = null;
        }

        function test_button_data() {
            return [{ tag: "act", type: act }, { tag: "ink", type: ink }, { tag: "plain", type: plain }, { tag: "list card", type: listCard }];
        }

        function test_button(row) {
            const button = createTemporaryObject(row.type, stage);
            listen(button, "clicked");
            mouseClick(button);
            compare(spy.count, 1);
            verify(!button.visualFocus, "a touch draws no ring");
            stage.forceActiveFocus();
            button.forceActiveFocus(Qt.TabFocusReason);
            verify(button.visualFocus);
            keyClick(Qt.Key_Space);
            compare(spy.count, 2);
            keyClick(Qt.Key_Return);
            compare(spy.count, 3);
            keyClick(Qt.Key_Enter);
            compare(spy.count, 4);
            button.enabled = false;
            mouseClick(button);
            compare(spy.count, 4);
        }

        function test_aDueCardSaysSoInWords() {
            const card = createTemporaryObject(listCard, stage);
            compare(card.Accessible.name, "Slough corner, due · 8 m, 7 nights");
            card.due = false;
            compare(card.Accessible.name, "Slough corner, 8 m, 7 nights");
        }

        function test_toggle() {
            const row = createTemporaryObject(toggle, stage);
            listen(row, "toggled");
            mouseClick(row, 10, 10);
            compare(row.checked, true);
            row.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Space);
            compare(row.checked, false);
            keyClick(Qt.Key_Return);
            compare(row.checked, true);
            compare(spy.count, 3);
            compare(row.Accessible.name, "The trap was emptied");
        }

        function test_chips() {
            const group = createTemporaryObject(chips, stage);
            waitForRendering(group);
            listen(group, "picked");
            mouseClick(findChild(group, "chip_flooded"));
            compare(spy.signalArguments[0][0], "flooded");
            compare(findChild(group, "chip_fallen").isChosen, true);
            compare(findChild(group, "chip_flooded").isChosen, false);
            findChild(group, "chip_fallen").forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Right);
            keyClick(Qt.Key_Right);
            verify(findChild(group, "chip_gone").activeFocus);
            keyClick(Qt.Key_Right);
            keyClick(Qt.Key_Space);
            compare(spy.signalArguments[1][0], "gone");
            group.chosen = "";
            compare(findChild(group, "chip_fallen").isChosen, false);
        }

        function test_tabs() {
            const row = createTemporaryObject(tabs, stage);
            waitForRendering(row);
            listen(row, "picked");
            mouseClick(findChild(row, "tab_traps"));
            compare(spy.signalArguments[0][0], "traps");
            findChild(row, "tab_today").forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Right);
            keyClick(Qt.Key_Return);
            compare(spy.signalArguments[1][0], "traps");
            compare(findChild(row, "tab_today").isCurrent, true);
        }

        function test_noticeAndEmptyStateAct_data() {
            return [{ tag: "notice", type: notice, button: "noticeAction" }, { tag: "empty", type: empty, button: "emptyAction" }];
        }

        function test_noticeAndEmptyStateAct(row) {
            const item = createTemporaryObject(row.type, stage);
            waitForRendering(item);
            listen(item, "acted");
            mouseClick(findChild(item, row.button));
            compare(spy.count, 1);
        }

        function test_aNoticeSaysItsKind_data() {
            return [{ tag: "note", spoken: "Note: Is it right?" }, { tag: "caution", spoken: "Caution: Is it right?" },
                { tag: "question", spoken: "Question: Is it right?" }, { tag: "kept", spoken: "Kept: Is it right?" }];
        }

        function test_aNoticeSaysItsKind(row) {
            compare(createTemporaryObject(notice, stage, { kind: row.tag }).Accessible.name, row.spoken);
        }
    }
}
