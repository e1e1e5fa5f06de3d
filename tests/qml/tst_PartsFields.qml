// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Duskrow.Parts

Item {
    id: stage

    width: 360
    height: 640

    Component {
        id: text
        FieldText {
            width: 340
            label: "Name of the field"
        }
    }
    Component {
        id: remark
        FieldRemark {
            width: 340
            label: "Remark"
            maximumLength: 20
        }
    }
    Component {
        id: number
        FieldNumber {
            width: 340
            label: "Canopy"
            unit: "cm"
            step: 5
            to: 300
            known: false
            onEdited: v => {
                value = v;
                known = true;
            }
            onCleared: known = false
        }
    }
    SignalSpy {
        id: spy
    }

    TestCase {
        name: "PartsFields"
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

        function test_textReportsWhatIsTyped() {
            const field = make(text);
            mouseClick(findChild(field, "box"));
            type("oak");
            compare(spy.count, 3);
            compare(spy.signalArguments[2][0], "oak");
            field.text = "set from outside";
            compare(spy.count, 3);
        }

        function test_textShowsItsError() {
            const field = make(text, { error: "A name is needed." });
            compare(findChild(field, "error").text, "A name is needed.");
            verify(findChild(field, "error").visible);
            compare(findChild(field, "box").Accessible.description, "A name is needed.");
            field.error = "";
            verify(!findChild(field, "error").visible);
        }

        function test_remarkGrowsStopsAndLetsTabOut() {
            const field = make(remark);
            const box = findChild(field, "box");
            const before = box.height;
            mouseClick(box);
            type("deer");
            compare(spy.signalArguments[3][0], "deer");
            for (let i = 0; i < 5; ++i)
                keyClick(Qt.Key_Return);
            tryVerify(() => box.height > before);
            type("0123456789abcdefghij");
            compare(box.length, 20);
            keyClick(Qt.Key_Tab);
            compare(box.length, 20);
        }

        function test_number_data() {
            return [{ tag: "a number is taken", typed: "95", value: 95, complaint: "" },
                { tag: "zero is a number", typed: "0", value: 0, complaint: "" },
                { tag: "letters are refused", typed: "9x", complaint: "Only a whole number can stand here, for example 5." },
                { tag: "a fraction is refused", typed: "9.5", complaint: "Only a whole number can stand here, for example 5." },
                { tag: "too much is refused", typed: "1000000000", complaint: "It must lie between 0 and 300." },
                { tag: "less than nothing is refused", typed: "-3", complaint: "It must lie between 0 and 300." },
                { tag: "a bare minus is refused", typed: "-", complaint: "Only a whole number can stand here, for example 5." }];
        }

        function test_number(row) {
            const field = make(number);
            mouseClick(findChild(field, "box"));
            type(row.typed);
            compare(field.complaint, row.complaint);
            compare(field.valid, row.complaint === "");
            compare(findChild(field, "box").text, row.typed);
            if (row.value !== undefined)
                compare(field.value, row.value);
        }

        function test_emptyIsNotZero() {
            const field = make(number, { known: true, value: 95 });
            compare(findChild(field, "box").text, "95");
            findChild(field, "box").forceActiveFocus();
            keyClick(Qt.Key_Backspace);
            compare(field.known, false);
            verify(field.valid);
            compare(spy.count, 0);
            type("0");
            compare(field.known, true);
            compare(field.value, 0);
        }

        function test_emptyIsRefusedWhereANumberIsNeeded() {
            const field = make(number, { known: true, value: 95, emptyAllowed: false });
            findChild(field, "box").forceActiveFocus();
            keyClick(Qt.Key_Backspace);
            compare(field.complaint, "A number is needed here.");
            compare(field.value, 95);
        }

        function test_keysStepAndStopAtTheEnds() {
            const field = make(number, { known: true, value: 292 });
            mouseClick(findChild(field, "plus"));
            compare(field.value, 297);
            compare(findChild(field, "box").text, "297");
            mouseClick(findChild(field, "plus"));
            compare(field.value, 300);
            verify(!findChild(field, "plus").enabled);
            findChild(field, "box").forceActiveFocus();
            keyClick(Qt.Key_Down);
            compare(field.value, 295);
            findChild(field, "minus").forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Space);
            compare(field.value, 290);
        }

        function test_aStepMendsABadEntry() {
            const field = make(number, { known: true, value: 10 });
            mouseClick(findChild(field, "box"));
            type("x");
            verify(!field.valid);
            mouseClick(findChild(field, "plus"));
            verify(field.valid);
            compare(findChild(field, "box").text, "15");
        }

        function test_fractionsWhereAskedFor() {
            const field = make(number, { decimals: 1, step: 0.5 });
            mouseClick(findChild(field, "box"));
            type("9.5");
            fuzzyCompare(field.value, 9.5, 0.001);
            compare(findChild(field, "box").text, "9.5");
            mouseClick(findChild(field, "plus"));
            compare(findChild(field, "box").text, "10.0");
        }

        function test_anOutsideValueIsShown() {
            const field = make(number, { known: true, value: 10 });
            field.value = 120;
            tryCompare(findChild(field, "box"), "text", "120");
            field.known = false;
            tryCompare(findChild(field, "box"), "text", "");
        }

        // A view model tells of both, one after the other.
        function test_typingOutlivesItsEcho() {
            const field = make(number, { known: false, value: 0, decimals: 1 });
            field.edited.connect(value => {
                field.known = true;
                field.value = value;
            });
            mouseClick(findChild(field, "box"));
            for (const c of "12.5")
                keyClick(c);
            wait(0);
            compare(findChild(field, "box").text, "12.5");
            compare(field.value, 12.5);
        }
    }
}
