// SPDX-License-Identifier: MIT
// What is asked before a visit is kept, which trap it is, and how a kept visit is corrected.
import QtQuick
import QtTest

VisitStory {
    id: test

    name: "VisitAsk"

    function toDone(moths: int) {
        begin();
        visit().count.type(moths);
        next("trap");
        next("lure");
        next("done");
    }

    function test_questionsNeverBlock_data() {
        return [
                    { tag: "a day ahead", moths: 5, days: 2, words: "2 days ahead" },
                    { tag: "before set-up", moths: 5, days: -50, words: "8 days before the trap was set up" },
                    { tag: "far above the others", moths: 900, days: 0, words: "900 moths is far above the largest other catch of this trap, 200" },
                    { tag: "more than a bucket holds as a rule", moths: 6000, days: 0, words: "6,000 moths in one trap is very many" },
                    { tag: "a second visit within a day", moths: 5, days: -7, words: "it emptied the trap. Are these other moths?" }
                ];
    }

    function test_questionsNeverBlock(row) {
        toDone(row.moths);
        for (let i = 0; i < Math.abs(row.days); ++i)
            visit().done.day = new Date(new Date(visit().done.day + "T12:00Z").getTime() + Math.sign(row.days) * 86400000).toISOString().substring(
                        0, 10);
        const asked = visit().done.questions;
        verify(asked.some(question => question.includes(row.words)), asked.join(" | "));
        mouseClick(find("keep"));
        compare(visit().step, "done", "it asks first");
        tapInSheet("askSheet", "safe");
        compare(visit().step, "done");
        mouseClick(find("keep"));
        tapInSheet("askSheet", "yes");
        tryCompare(visit(), "step", "kept");
        compare(kept(visit().visitId, "pest"), row.moths);
    }

    function test_anAnswerHolds() {
        toDone(900);
        compare(visit().done.questions.length, 1);
        settle();
        mouseClick(findChild(find("question_0"), "noticeAction"));
        compare(visit().done.questions.length, 0);
        world.flush();
        world.restart();
        open("visit", trap);
        compare(visit().done.questions.length, 0, "and is not asked again after a kill");
        keep();
    }

    function test_aCorrectionKeepsOnlyWhatChanged() {
        begin();
        const id = world.addCount(trap, "2026-07-13", 470);
        open("visit", "edit:" + id);
        verify(find("pageHead").subtitle.includes("Correcting the visit of Monday 13 July"));
        compare(find("number").value, "470");
        mouseClick(find("tally_keypad"));
        for (const key of ["4", "7"])
            mouseClick(inSheet("keypadSheet", "key_" + key));
        tapInSheet("keypadSheet", "key_done");
        const before = world.changes();
        next("trap");
        next("lure");
        mouseClick(find("details"));
        next("done");
        compare(keep(), id);
        compare(world.changes(), before + 1);
        compare(world.changesOf(id), 2, "the first count stays in the history");
        compare(["pest", "day", "emptied", "lure_there"].map(field => kept(id, field)), [47, "2026-07-13", true, undefined]);
        verify(find("kept").text.includes("corrected on this phone"));
        verify(!world.hasDraft("visit-edit/" + id));
    }

    function test_aCorrectionWithoutAChangeKeepsNothing() {
        begin();
        const id = world.addCount(trap, "2026-07-13", 47);
        open("visit", "edit:" + id);
        const before = world.changes();
        next("trap");
        next("lure");
        mouseClick(find("details"));
        next("done");
        keep();
        compare(find("kept").text, "Nothing was changed.");
        compare(world.changes(), before);
    }

    function test_unsureMothsOfACorrectionMoveTheirSample() {
        begin();
        visit().count.bin = "unsure";
        visit().count.add(3);
        visit().count.noneCaught();
        const id = goThrough();
        const sample = world.recordsOf("sample")[0];
        compare(kept(sample, "moths"), 3);
        open("visit", "edit:" + id);
        visit().count.bin = "unsure";
        visit().count.add(-1);
        goThrough();
        compare([kept(sample, "moths"), world.recordsOf("sample").length], [2, 1]);
        open("visit", "edit:" + id);
        visit().count.bin = "unsure";
        visit().count.add(-2);
        goThrough();
        verify(kept(sample, "withdrawn").length > 0, "without an unsure moth there is no sample");
    }

    function test_twoCloseTrapsAreAskedFor() {
        begin();
        const other = world.addTrap("Slough corner", "bertha trap 2", "2026-07-07", 52.10003, -106.6);
        world.standAt(52.1, -106.6, 5);
        open("visit", trap);
        tryCompare(visit(), "step", "which");
        // The list is made anew with each reading of the receiver.
        tryVerify(() => findChild(step(), "near_0") && findChild(step(), "near_1"));
        settle();
        compare(find("near_0").title, "Slough corner · bertha trap 1");
        compare(find("near_0").dueWords, "here");
        mouseClick(find("near_1"));
        tryVerify(() => findChild(page, "pages").currentItem.model.trapId === other);
        tryVerify(() => find("pageHead").title === "Slough corner · bertha trap 2");
        count(2);
        compare(visit().step, "count", "once counting has begun it is not asked");
        tryVerify(() => find("pageHead").subtitle.includes("away"));
        const id = goThrough();
        compare(kept(id, "trap"), other);
        compare([kept(id, "lat_e7"), kept(id, "lon_e7")], [521000000, -1066000000]);
    }

    function test_theTrapStoodAtIsOffered() {
        begin();
        const far = world.addTrap("Poplar bend", "1", "2026-06-02", 52.11, -106.6);
        world.standAt(52.1099, -106.6, 5);
        open("visit", "here");
        tryVerify(() => find("near_0") && find("near_0").title === "Poplar bend · 1");
        tryVerify(() => find("near_1").rightText === "1.1 km to the south");
        verify(!find("ambiguous").visible);
        mouseClick(find("near_0"));
        tryVerify(() => findChild(page, "pages").currentItem.model.trapId === far);
        compare(visit().step, "count");
    }

    function test_withoutAPositionTheNamesDo() {
        begin();
        open("visit", "here");
        tryVerify(() => findChild(step(), "near_0"));
        verify(find("pageHead").subtitle.includes("no position"));
    }

    function test_aTrapThatIsNotThere() {
        begin();
        open("visit", "01890a5d-ac96-774b-bcce-b302099a8057");
        compare(visit().step, "which");
        verify(find("trouble").text.includes("not in the store"), find("trouble").text);
    }
}
