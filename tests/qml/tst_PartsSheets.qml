// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Duskrow.Parts

Item {
    id: stage

    width: 360
    height: 640

    Component {
        id: keypadSheet
        KeypadSheet {
            label: "Moths in the bucket"
        }
    }
    Component {
        id: askSheet
        AskSheet {
            title: "Is it right?"
            yesText: "Yes"
            otherText: "Later"
            safeText: "Look again"
        }
    }
    SignalSpy {
        id: spy
    }
    SignalSpy {
        id: dismissed
        signalName: "dismissed"
    }

    TestCase {
        name: "PartsSheets"
        when: windowShown

        function make(type, signalName) {
            const part = createTemporaryObject(type, stage);
            spy.clear();
            spy.signalName = signalName;
            spy.target = part;
            return part;
        }

        function cleanup() {
            spy.target = null;
            dismissed.target = null;
        }

        function opened(sheet) {
            dismissed.clear();
            dismissed.target = sheet;
            sheet.open();
            tryVerify(() => sheet.opened);
            return sheet;
        }

        function test_keypadByTaps() {
            const sheet = opened(make(keypadSheet, "accepted"));
            const keypad = findChild(sheet.contentItem, "keypad");
            for (const key of ["4", "1", "9", "delete", "8"])
                mouseClick(findChild(keypad, "key_" + key));
            compare(keypad.digits, "418");
            mouseClick(findChild(keypad, "key_done"));
            compare(spy.signalArguments[0][0], 418);
            tryVerify(() => !sheet.visible);
            compare(dismissed.count, 0);
        }

        function test_keypadByKeysHoldsNineDigits() {
            const sheet = opened(make(keypadSheet, "accepted"));
            const keypad = findChild(sheet.contentItem, "keypad");
            for (const key of "001234567890")
                keyClick(key);
            compare(keypad.digits, "123456789");
            keyClick(Qt.Key_Backspace);
            keyClick(Qt.Key_Return);
            compare(spy.signalArguments[0][0], 12345678);
        }

        function test_keypadWithoutANumberGivesNone() {
            const sheet = opened(make(keypadSheet, "accepted"));
            keyClick(Qt.Key_Return);
            compare(spy.count, 0);
            keyClick("7");
            mouseClick(findChild(sheet.contentItem, "key_C"));
            verify(!findChild(sheet.contentItem, "key_done").enabled);
            keyClick(Qt.Key_Escape);
            tryCompare(dismissed, "count", 1);
            compare(spy.count, 0);
        }

        function test_askByTaps_data() {
            return [{ tag: "yes", given: "yes", dismissals: 0 }, { tag: "other", given: "other", dismissals: 0 },
                { tag: "safe", given: "dismissed", dismissals: 1 }];
        }

        function test_askByTaps(row) {
            const sheet = opened(make(askSheet, row.given));
            mouseClick(findChild(sheet.contentItem, row.tag));
            tryVerify(() => !sheet.visible);
            compare(spy.count, 1);
            compare(dismissed.count, row.dismissals);
        }

        function test_escapeIsTheSafeAnswer() {
            const sheet = opened(make(askSheet, "yes"));
            keyClick(Qt.Key_Escape);
            tryVerify(() => !sheet.visible);
            compare(dismissed.count, 1);
            compare(spy.count, 0);
        }

        function test_theKeyboardStaysInTheSheet() {
            const sheet = opened(make(askSheet, "yes"));
            verify(findChild(sheet.contentItem, "safe").activeFocus);
            const names = [];
            for (let i = 0; i < 4; ++i) {
                keyClick(Qt.Key_Tab);
                names.push(stage.Window.activeFocusItem.objectName);
            }
            compare(names.join(" "), "yes other safe yes");
            keyClick(Qt.Key_Return);
            compare(spy.count, 1);
        }
    }
}
