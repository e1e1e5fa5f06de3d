// SPDX-License-Identifier: MIT
// What people type and paste into a visit by mistake: each gets a sentence or is kept, and nothing is lost.
import QtQuick
import QtTest

VisitStory {
    id: test

    name: "VisitInput"

    function toDone() {
        begin();
        visit().count.type(5);
        next("trap");
        next("lure");
        next("done");
    }

    function test_heights_data() {
        return [
                    { tag: "letters", text: "high", refused: true },
                    { tag: "negative", text: "-5", refused: true },
                    { tag: "a thousand million", text: "1000000000", refused: true },
                    { tag: "taller than any stake", text: "1001", refused: true },
                    { tag: "not whole", text: "95.5", refused: true },
                    { tag: "spaces around", text: " 95 ", refused: false }
                ];
    }

    function test_heights(row) {
        begin();
        visit().count.type(5);
        next("trap");
        paste("canopy", row.text);
        compare(find("canopy").valid, !row.refused);
        compare(within("canopy", "box").text, row.text, "what was typed stays");
        compare(visit().trap.canopyMeasured, !row.refused);
        next("lure");
        next("done");
        compare(kept(keep(), "canopy_mm"), row.refused ? undefined : 950);
    }

    function test_remarks_data() {
        return [
                    { tag: "emoji", text: "moths 🦋🦋 in the tray" },
                    { tag: "right to left", text: "ספרתי חמישה עשים" },
                    { tag: "mixed directions and lines", text: "gate: البوابة\nnorth" },
                    { tag: "ten thousand characters", text: "moth ".repeat(2000).trim() },
                    { tag: "looks like a query", text: "'); DROP TABLE change; --" }
                ];
    }

    function test_remarks(row) {
        toDone();
        paste("remark", row.text);
        const id = keep();
        compare(kept(id, "remark"), row.text);
        world.restart();
        compare(kept(id, "remark"), row.text, "and after a restart");
    }

    function test_tooLongARemarkIsCutWhereItIsTyped() {
        toDone();
        paste("remark", "a".repeat(12000));
        compare(kept(keep(), "remark").length, 10000);
    }

    function test_days_data() {
        return [
                    { tag: "letters", text: "monday" },
                    { tag: "no such day", text: "2026-02-30" },
                    { tag: "half", text: "2026-07" }
                ];
    }

    function test_days(row) {
        toDone();
        enter("day", row.text);
        verify(!find("day").valid);
        compare(visit().done.day, "2026-07-14", "the day stays until there is another");
        compare(kept(keep(), "day"), "2026-07-14");
    }

    function test_theYear1970() {
        toDone();
        enter("day", "1970-01-01");
        verify(visit().done.questions.length > 0, "it is asked");
        mouseClick(find("keep"));
        tapInSheet("askSheet", "yes");
        tryCompare(visit(), "step", "kept");
        compare(kept(visit().visitId, "day"), "1970-01-01");
    }

    function test_aBagWithoutANumber() {
        begin();
        visit().count.bin = "unsure";
        visit().count.add(1);
        visit().count.noneCaught();
        next("trap");
        next("lure");
        next("done");
        enter("sampleNumber", "  ");
        verify(find("sampleNumber").error.includes("empty"), find("sampleNumber").error);
        mouseClick(find("keep"));
        compare(visit().step, "done", "a bag that cannot be told from others is no sample");
        enter("sampleNumber", "9");
        keep();
    }

    function test_typedText_data() {
        return [
                    { tag: "letters", keys: "abc" },
                    { tag: "a sign", keys: "-" },
                    { tag: "a point", keys: "." }
                ];
    }

    function test_typedText(row) {
        begin();
        count(2);
        mouseClick(find("tally_keypad"));
        inSheet("keypadSheet", "keypad");
        for (const key of row.keys)
            keyClick(key);
        compare(inSheet("keypadSheet", "keypad").digits, "", "only digits are a number of moths");
        keyClick(Qt.Key_Escape);
        tryVerify(() => !isOpen("keypadSheet"));
        compare(find("number").value, "2");
    }

    function test_aPictureThatIsNone() {
        toDone();
        visit().done.addPhoto("file:///nowhere/at/all.jpg");
        tryVerify(() => find("trouble").visible);
        verify(find("trouble").text.includes("picture"), find("trouble").text);
        visit().done.addPhoto(Qt.resolvedUrl("tst_VisitInput.qml"));
        wait(100);
        verify(!visit().done.hasPhoto, "a file that is no picture is refused");
        const file = world.folder() + "/trap.png";
        grabImage(page).save(file);
        visit().done.addPhoto("file://" + file);
        tryCompare(visit().done, "hasPhoto", true);
        verify(!find("trouble").visible);
        const id = keep();
        compare(kept(id, "photo").length, 64, "the hash of its content");
    }

    function test_aFullNumberInEachBin() {
        begin();
        for (const bin of ["pest", "not_it", "unsure", "bees"]) {
            visit().count.bin = bin;
            visit().count.type(999999);
            verify(!find("trouble").visible);
            visit().count.add(1);
            verify(find("trouble").visible, bin);
            compare(find("number").value, "999,999");
        }
        visit().count.type(-1);
        verify(find("trouble").visible);
    }
}
