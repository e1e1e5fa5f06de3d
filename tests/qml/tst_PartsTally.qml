// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Duskrow.Parts

Item {
    id: stage

    width: 360
    height: 640

    Component {
        id: pad
        TallyPad {
            width: 340
            height: 200
            label: "One more moth"
        }
    }
    Component {
        id: keys
        TallyKeys {
            width: 340
            label: "Moths"
        }
    }
    Component {
        id: bigNumber
        BigNumber {
            width: 340
            value: "47"
            caption: "moths"
            lines: ["6.7 a night", "259 so far"]
        }
    }
    Component {
        id: bandDots
        BandDots {
            width: 340
            band: 2
            name: "uncertain"
        }
    }
    SignalSpy {
        id: spy
    }

    TestCase {
        name: "PartsTally"
        when: windowShown

        function make(type, signalName) {
            const part = createTemporaryObject(type, stage);
            spy.clear();
            spy.signalName = signalName;
            spy.target = part;
            return part;
        }

        function test_quickTouchesAllCount() {
            const part = make(pad, "stepped");
            for (let i = 0; i < 25; ++i) {
                const touch = touchEvent(part);
                touch.press(0, part, 100, 100).commit();
                touch.release(0, part, 100, 100).commit();
            }
            compare(spy.count, 25);
        }

        function test_quickClicksAllCount() {
            const part = make(pad, "stepped");
            for (let i = 0; i < 5; ++i)
                mouseDoubleClickSequence(part, 100, 100);
            compare(spy.count, 10);
        }

        function cleanup() {
            spy.target = null;
        }

        function sum() {
            return spy.signalArguments.reduce((total, given) => total + given[0], 0);
        }

        function test_eachTouchIsOneMore() {
            const part = make(pad, "stepped");
            for (let i = 0; i < 5; ++i)
                mouseClick(part, 20 + 60 * i, 100);
            compare(spy.count, 5);
            compare(sum(), 5);
        }

        function test_aWanderingTouchCountsOnce() {
            const part = make(pad, "stepped");
            mousePress(part, 40, 40);
            mouseMove(part, 120, 90);
            mouseMove(part, 200, 120);
            mouseRelease(part, 200, 120);
            compare(sum(), 1);
        }

        function test_aTouchThatLeavesDoesNotCount() {
            const part = make(pad, "stepped");
            mousePress(part, 40, 40);
            mouseMove(part, 40, 260);
            mouseRelease(part, 40, 260);
            compare(spy.count, 0);
        }

        function test_padKeys_data() {
            return [{ tag: "space", key: Qt.Key_Space, by: 1 }, { tag: "up", key: Qt.Key_Up, by: 1 }, { tag: "plus", key: Qt.Key_Plus, by: 1 },
                { tag: "down", key: Qt.Key_Down, by: -1 }, { tag: "minus", key: Qt.Key_Minus, by: -1 },
                { tag: "backspace", key: Qt.Key_Backspace, by: -1 }, { tag: "another key", key: Qt.Key_A, by: 0 }];
        }

        function test_padKeys(row) {
            const part = make(pad, "stepped");
            part.forceActiveFocus(Qt.TabFocusReason);
            keyClick(row.key);
            compare(sum(), row.by);
        }

        function test_tallyKeys_data() {
            return [{ tag: "-1", by: -1 }, { tag: "5", by: 5 }, { tag: "10", by: 10 }];
        }

        function test_tallyKeys(row) {
            const part = make(keys, "stepped");
            waitForRendering(part);
            const key = findChild(part, "tally_" + row.tag);
            mouseClick(key);
            compare(sum(), row.by);
            key.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Return);
            compare(sum(), 2 * row.by);
        }

        function test_nothingToTakeAway() {
            const part = make(keys, "stepped");
            part.canTakeAway = false;
            waitForRendering(part);
            mouseClick(findChild(part, "tally_-1"));
            compare(spy.count, 0);
        }

        function test_keypadIsAskedFor() {
            const part = make(keys, "keypadAsked");
            waitForRendering(part);
            mouseClick(findChild(part, "tally_keypad"));
            compare(spy.count, 1);
        }

        function test_numbersSayWhatTheyMean() {
            compare(createTemporaryObject(bigNumber, stage).Accessible.name, "47 moths, 6.7 a night, 259 so far");
            compare(createTemporaryObject(bandDots, stage).Accessible.name, "uncertain, band 2 of 4");
            compare(createTemporaryObject(bandDots, stage, { band: 0, name: "not known" }).Accessible.name, "not known");
        }
    }
}
