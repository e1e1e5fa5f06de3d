// SPDX-License-Identifier: MIT
// Counts that were phoned or texted, typed like a row of a spreadsheet.
import QtQuick
import QtTest
import Duskrow.Testing

TypingStory {
    id: test

    name: "Typing"
    visible: true
    width: 400
    height: 400

    function test_threeCountsWithoutAMouse() {
        const at = season();
        const page = typing(at);
        compare(page.typing.rows.count, 3);
        tryVerify(() => box(page, 0).activeFocus, 1000, "the first row waits for its count");
        words("12");
        keyClick(Qt.Key_Return);
        verify(box(page, 1).activeFocus);
        words("0");
        keyClick(Qt.Key_Return);
        words("7");
        keyClick(Qt.Key_Return);
        tryCompare(page.typing, "kept", 3);
        const visits = visitsOf(at);
        compare(visits.length, 3);
        compare(visits.map(visit => at.world.fieldOf(visit, "pest")).sort((a, b) => a - b), [0, 7, 12]);
        for (const visit of visits) {
            compare(at.world.fieldOf(visit, "day"), "2026-07-13", "the count day of the week");
            compare(at.world.fieldOf(visit, "reported_how"), "phone");
            compare(at.world.fieldOf(visit, "emptied"), true);
            compare(at.world.fieldOf(visit, "at_ms"), undefined, "nobody noted the time");
        }
        const byTrap = trap => visits.find(visit => at.world.fieldOf(visit, "trap") === trap);
        compare(at.world.fieldOf(byTrap(at.toms), "observer"), "Tom");
        compare(at.world.fieldOf(byTrap(at.idas), "observer"), "Ida");
        verify(find(find(page, "row0"), "below").text.startsWith("Kept: 12 moths on 13 Jul, by phone, from"), find(find(page, "row0"), "below").text);
        compare(at.world.draftKeys().filter(key => key.startsWith("typed/")), []);
    }

    function test_dayAndWayStay() {
        const at = season();
        const page = typing(at);
        tap(find(page, "how"), "chip_text_message");
        tap(page, "dayAfter");
        compare(page.typing.day, "2026-07-14");
        box(page, 0).forceActiveFocus();
        words("3");
        keyClick(Qt.Key_Return);
        words("4");
        keyClick(Qt.Key_Return);
        tryCompare(page.typing, "kept", 2);
        for (const visit of visitsOf(at)) {
            compare(at.world.fieldOf(visit, "day"), "2026-07-14");
            compare(at.world.fieldOf(visit, "reported_how"), "text_message");
        }
        at.world.flush();
        at.world.restart();
        const again = typing(at);
        compare(again.typing.how, "text_message");
        compare(again.typing.day, "2026-07-14");
        compare(again.typing.rows.count, 1, "who has reported is asked no more");
    }

    function test_wrongInputStaysInPlace_data() {
        return [
            { tag: "nothing", typed: "" },
            { tag: "letters", typed: "many" },
            { tag: "letters behind", typed: "12a" },
            { tag: "below zero", typed: "-3" },
            { tag: "a part of a moth", typed: "1.5" },
            { tag: "a comma, which may be a thousand or a tenth", typed: "1,200" },
            { tag: "two numbers", typed: "4 7" },
            { tag: "more than any bucket holds", typed: "1000000" },
            { tag: "so many digits that no number holds them", typed: "99999999999999999999" },
            { tag: "a formula", typed: "=1+1" }
        ];
    }

    function test_wrongInputStaysInPlace(data) {
        const at = season();
        const page = typing(at);
        box(page, 0).forceActiveFocus();
        words(data.typed);
        keyClick(Qt.Key_Return);
        compare(visitsOf(at).length, 0);
        compare(box(page, 0).text, data.typed);
        verify(box(page, 0).activeFocus, "one can go on typing");
        const sentence = find(find(page, "row0"), "error").text;
        verify(sentence.length > 10 && sentence.endsWith("."), sentence);
        box(page, 0).selectAll();
        words("5");
        compare(find(find(page, "row0"), "error").text, "", "the sentence goes when it is mended");
        keyClick(Qt.Key_Return);
        tryCompare(page.typing, "kept", 1);
    }

    function test_aDayThatCannotBe_data() {
        return [
            { tag: "still to come", day: "2026-07-15", says: "still to come" },
            { tag: "of the week before", day: "2026-07-06", says: "6 Jul to 12 Jul" }
        ];
    }

    function test_aDayThatCannotBe(data) {
        const at = season();
        const page = typing(at);
        page.typing.day = data.day;
        verify(page.typing.dayError.includes(data.says), page.typing.dayError);
        box(page, 0).forceActiveFocus();
        words("5");
        keyClick(Qt.Key_Return);
        compare(visitsOf(at).length, 0);
        compare(box(page, 0).text, "5");
        page.typing.day = "2026-07-14";
        keyClick(Qt.Key_Return);
        tryCompare(page.typing, "kept", 1);
    }

    function test_nobodyReported() {
        const at = season();
        const page = typing(at);
        const who = box(page, 1, "who");
        who.forceActiveFocus();
        who.selectAll();
        keyClick(Qt.Key_Delete);
        box(page, 1).forceActiveFocus();
        words("5");
        keyClick(Qt.Key_Return);
        compare(find(find(page, "row1"), "error").text, "Say who reported it.");
        compare(visitsOf(at).length, 0);
    }

    // The app is killed while two rows are half typed.
    function test_halfTypedRowsSurvive() {
        const at = season();
        let page = typing(at);
        box(page, 0).forceActiveFocus();
        words("41");
        box(page, 2, "who").forceActiveFocus();
        box(page, 2, "who").selectAll();
        words("Tom's son");
        at.world.flush();
        at.world.restart();
        page = typing(at);
        compare(visitsOf(at).length, 0);
        compare(box(page, 0).text, "41");
        compare(box(page, 1).text, "");
        compare(box(page, 2, "who").text, "Tom's son");
        box(page, 0).forceActiveFocus();
        keyClick(Qt.Key_Return);
        tryCompare(page.typing, "kept", 1);
        page.typing.keep(0); // once more by mischance
        at.world.flush();
        compare(visitsOf(at).length, 1);
        compare(at.world.draftKeys().filter(key => key.startsWith("typed/")).length, 1, "the other row is still half typed");
    }

    function test_arrowsGoUpAndDown() {
        const at = season();
        const page = typing(at);
        box(page, 0).forceActiveFocus();
        keyClick(Qt.Key_Down);
        verify(box(page, 1).activeFocus);
        keyClick(Qt.Key_Tab);
        verify(box(page, 1, "who").activeFocus);
        box(page, 1).forceActiveFocus();
        keyClick(Qt.Key_Up);
        verify(box(page, 0).activeFocus);
    }
}
