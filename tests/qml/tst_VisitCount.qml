// SPDX-License-Identifier: MIT
// The count: bins, samples, a heavy catch, and everything by the keyboard alone.
import QtQuick
import QtTest

VisitStory {
    id: test

    name: "VisitCount"

    function test_unsureMothsBecomeANumberedSample() {
        begin();
        count(4);
        mouseClick(find("bin_not_it"));
        count(3);
        mouseClick(find("bin_unsure"));
        count(2);
        mouseClick(find("bin_bees"));
        count(1);
        next("trap");
        next("lure");
        next("done");
        compare(find("sampleNumber").text, "bertha trap 1-1");
        enter("sampleNumber", " W 7");
        const id = keep();
        compare(find("bag").text, "Write W 7 on the bag in pencil, then freeze it.");
        compare(["pest", "not_it", "unsure", "bees"].map(field => kept(id, field)), [4, 3, 2, 1]);
        const samples = world.recordsOf("sample");
        compare(samples.length, 1);
        compare(["visit", "trap", "number", "moths", "state", "kept_day"].map(field => kept(samples[0], field)), [id, trap, "W 7", 2, "kept",
                                                                                                            "2026-07-14"]);
    }

    function test_onlyOtherMothsStillAsksForTheZero() {
        begin();
        mouseClick(find("bin_not_it"));
        count(3);
        mouseClick(find("next"));
        compare(inSheet("zeroSheet", "title").text, "No bertha armyworm moth among them?");
        tapInSheet("zeroSheet", "yes");
        const id = goThrough();
        compare([kept(id, "pest"), kept(id, "not_it")], [0, 3]);
    }

    function test_theKeypad() {
        begin();
        mouseClick(find("tally_keypad"));
        const keypad = inSheet("keypadSheet", "keypad");
        for (const key of ["1", "2", "0"])
            mouseClick(findChild(keypad, "key_" + key));
        tapInSheet("keypadSheet", "key_done");
        compare(find("number").value, "120");
        tap("undo");
        compare(find("number").value, "–", "a typed number is one step");
    }

    function test_aNumberNoBucketHolds() {
        begin();
        count(3);
        mouseClick(find("tally_keypad"));
        inSheet("keypadSheet", "keypad");
        for (let i = 0; i < 10; ++i)
            keyClick(Qt.Key_9);
        keyClick(Qt.Key_Return);
        tryVerify(() => find("trouble").visible);
        verify(find("trouble").text.includes("999,999"), find("trouble").text);
        compare(find("number").value, "3", "what was counted stands");
        mouseClick(find("pad"));
        verify(!find("trouble").visible);
    }

    function test_aHeavyCatchFromParts() {
        begin();
        tap("other");
        tapInSheet("otherSheet", "heavy");
        chip("method", "weight");
        enter("whole", "412");
        const rows = [["20.4", "46"], ["19.7", "58"], ["21.1", "39"], ["20.2", "51"]];
        for (let i = 0; i < rows.length; ++i) {
            if (i > 0)
                tap("addPart");
            typeInto(findChild(within("part_" + i, "partAmount"), "box"), rows[i][0]);
            typeInto(findChild(within("part_" + i, "partMoths"), "box"), rows[i][1]);
        }
        // The worked example of tests/golden: 981.92, 711 to 1,253.
        compare(find("estimate").value, "982");
        compare(find("estimate").lines[0], "likely 711 to 1,253");
        world.flush();
        world.restart();
        open("visit", trap);
        tap("other");
        tapInSheet("otherSheet", "heavy");
        compare(find("estimate").value, "982", "half-counted parts outlive a kill");
        mouseClick(find("useEstimate"));
        compare(find("number").value, "982");
        verify(find("estimateWords").text.includes("711 to 1,253"));
        next("trap");
        next("lure");
        next("done");
        tap("question_0");
        mouseClick(findChild(find("question_0"), "noticeAction"));
        const id = keep();
        compare(["pest", "pest_low", "pest_high", "count_method"].map(field => kept(id, field)), [982, 711, 1253, "weight"]);
        compare(["part_counts", "part_amounts", "whole_amount"].map(field => kept(id, field)), ["46 58 39 51", "20400 19700 21100 20200", 412000]);
    }

    function test_partsThatCannotBe() {
        begin();
        tap("other");
        tapInSheet("otherSheet", "heavy");
        enter("whole", "10");
        typeInto(findChild(within("part_0", "partAmount"), "box"), "abc");
        verify(findChild(within("part_0", "partAmount"), "box").text.length > 0);
        compare(find("estimate").value, "–");
        typeInto(findChild(within("part_0", "partAmount"), "box"), "20");
        typeInto(findChild(within("part_0", "partMoths"), "box"), "40");
        verify(find("problem").visible, "a part larger than the whole is said");
        verify(!find("useEstimate").enabled);
        typeInto(findChild(within("part_0", "partMoths"), "box"), "-3");
        verify(!find("useEstimate").enabled);
    }

    function test_theMothGuideShowsTheMarks() {
        begin();
        tap("guide");
        verify(find("moth_0").visible);
        verify(find("moth_0").marks[0].includes("kidney-shaped"));
        compare([0, 1, 2, 3].map(i => find("moth_" + i).name), ["Bertha armyworm", "Clover cutworm", "True armyworm", "Wainscot moths"]);
        mouseClick(find("backToCount"));
        verify(find("pad").visible);
        verify(find("pad").activeFocus, "the keys count at once");
    }

    function test_aWholeVisitByKeysAlone() {
        begin();
        verify(find("pad").activeFocus);
        for (const key of [Qt.Key_Space, Qt.Key_Up, Qt.Key_Space, Qt.Key_Down, Qt.Key_Space])
            keyClick(key);
        compare(find("number").value, "3");
        for (const step of ["trap", "lure", "done"]) {
            tabTo("next");
            keyClick(Qt.Key_Return);
            tryCompare(visit(), "step", step);
        }
        tabTo("keep");
        keyClick(Qt.Key_Space);
        tryCompare(visit(), "step", "kept");
        compare(kept(visit().visitId, "pest"), 3);
        tabTo("finish");
        keyClick(Qt.Key_Return);
        compare(findChild(page, "pages").depth, 0, "and back where it began");
    }

    function tabTo(name: string) {
        for (let i = 0; i < 60; ++i) {
            if (findChild(page, name).activeFocus)
                return;
            keyClick(Qt.Key_Tab);
        }
        fail("the keyboard does not reach " + name);
    }
}
