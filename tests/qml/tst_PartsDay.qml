// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Duskrow.Parts

Item {
    id: stage

    width: 360
    height: 640

    Component {
        id: day
        FieldDay {
            width: 340
            label: "Day"
            day: "2026-07-07"
            today: "2026-07-07"
            onEdited: d => day = d
        }
    }
    SignalSpy {
        id: spy
    }

    TestCase {
        name: "PartsDay"
        when: windowShown

        function make(type, properties) {
            const field = createTemporaryObject(type, stage, properties ?? {});
            waitForRendering(field);
            spy.clear();
            spy.signalName = "edited";
            spy.target = field;
            return field;
        }

        function cleanup() {
            spy.target = null;
        }

        function type(words) {
            for (const letter of words)
                keyClick(letter);
        }

        function test_dayMovesByOne_data() {
            return [{ tag: "back", from: "2026-07-07", key: "dayBefore", to: "2026-07-06" },
                { tag: "over the end of a month", from: "2026-06-30", key: "dayAfter", to: "2026-07-01" },
                { tag: "over the end of a year", from: "2026-01-01", key: "dayBefore", to: "2025-12-31" },
                { tag: "into a leap day", from: "2028-02-28", key: "dayAfter", to: "2028-02-29" }];
        }

        function test_dayMovesByOne(row) {
            const field = make(day, { day: row.from });
            mouseClick(findChild(field, row.key));
            compare(field.day, row.to);
            compare(findChild(field, "box").text, row.to);
        }

        function test_dayIsSpoken() {
            const field = make(day);
            compare(findChild(field, "words").text, "Today, Tuesday 7 July 2026");
            field.day = "2026-07-06";
            compare(findChild(field, "words").text, "Yesterday, Monday 6 July 2026");
            field.day = "2026-06-30";
            compare(findChild(field, "words").text, "Tuesday 30 June 2026");
        }

        function test_dayRefusesWhatIsNone_data() {
            return [{ tag: "no such day", typed: "2026-02-30" }, { tag: "words", typed: "monday" }, { tag: "nothing", typed: "" }];
        }

        function test_dayRefusesWhatIsNone(row) {
            const field = make(day);
            const box = findChild(field, "box");
            box.forceActiveFocus();
            keyClick(Qt.Key_Backspace);
            type(row.typed);
            verify(!field.valid);
            keyClick(Qt.Key_Tab);
            verify(field.complaint.length > 0);
            compare(field.day, "2026-07-07");
            compare(box.text, row.typed);
        }

        function test_dayTakesWhatIsTyped() {
            const field = make(day);
            findChild(field, "box").forceActiveFocus();
            keyClick(Qt.Key_Backspace);
            type("2026-07-0");
            verify(!field.valid, "not finished");
            compare(field.complaint, "", "nobody is scolded while typing");
            compare(spy.count, 0);
            type("2");
            verify(field.valid);
            compare(field.day, "2026-07-02");
        }
    }
}
