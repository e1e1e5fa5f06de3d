// SPDX-License-Identifier: MIT
// A trap is lent, ended, replaced. As a person does it, and what is really kept of it.
import QtQuick
import QtTest

LifeStory {
    id: test

    name: "TrapEnd"

    function test_lendingUntilADayAndBackEarlier() {
        const at = standing();
        begin(at, "lend");
        type(pageOn(at), "until", "2026-07-20");
        tap(pageOn(at), "keep");
        tryVerify(() => find(pageOn(at), "trouble").visible, 5000, "to whom?");
        compare(at.world.recordsOf("loan").length, 0);
        type(pageOn(at), "borrower", "Ida");
        const page = keep(at);
        const loan = only(at, "loan");
        compare(fields(at, loan, ["borrower", "from_day", "until_day"]), "Ida 2026-07-14 2026-07-20");
        compare(find(page, "lent").text, "Lent to Ida until Monday 20 July.");
        mouseClick(find(find(page, "lent"), "noticeAction"));
        tryVerify(() => !find(page, "lent").visible);
        compare(at.world.fieldOf(loan, "until_day"), "2026-07-14");
        compare(at.world.changesOf(loan), 2);
    }

    function test_aLoanCannotEndBeforeItBegins() {
        const at = standing();
        begin(at, "lend");
        type(pageOn(at), "borrower", "Ida");
        type(pageOn(at), "until", "2026-07-01");
        tap(pageOn(at), "keep");
        tryVerify(() => find(pageOn(at), "trouble").visible);
        compare(at.world.recordsOf("loan").length, 0);
    }

    function test_endingStepByStep() {
        const at = standing();
        begin(at, "end");
        verify(find(pageOn(at), "lastCount").visible, "the last count comes first");
        const before = at.world.changes();
        tap(pageOn(at), "lureOut");
        tap(pageOn(at), "stripOut");
        tap(pageOn(at), "keep");
        tryVerify(() => findChild(pageOn(at), "finish"));
        compare(at.world.changes(), before + 1, "one change");
        compare(fields(at, at.trap, ["end_day", "end_reason", "lure_out", "strip_out", "washed"]),
                "2026-07-14 season_over true true undefined");
        compare(find(pageOn(at), "ended").text, "Ended on Tuesday 14 July: season over.");
        compare(done(pageOn(at))[0], "Ended: season over, still to do: trap washed and stored, 14 Jul");
        verify(!find(pageOn(at), "acts").visible);
        tap(pageOn(at), "finish");
        waitForRendering(pageOn(at), 500);
        verify(find(pageOn(at), "lureOut").checked, "what was done stays done");
        tap(pageOn(at), "washed");
        tap(pageOn(at), "keep");
        tryVerify(() => findChild(pageOn(at), "finish") && !find(pageOn(at), "finish").visible);
        compare(at.world.fieldOf(at.trap, "washed"), true);
    }

    function test_theLastCountIsATapAway() {
        const at = standing();
        begin(at, "end");
        mouseClick(find(find(pageOn(at), "lastCount"), "noticeAction"));
        verify(findChild(pageOn(at), "pad"), "the count is open");
    }

    function test_aLostTrapMakesItsTotalAMinimum() {
        const at = standing();
        begin(at, "end");
        tap(pageOn(at), "chip_lost");
        waitForRendering(pageOn(at), 500);
        verify(!find(pageOn(at), "lureOut").visible, "there is nothing to take out");
        tap(pageOn(at), "keep");
        tryVerify(() => findChild(pageOn(at), "ended"));
        compare(fields(at, at.trap, ["end_reason", "lure_out"]), "lost undefined");
        const season = open(at, "season");
        compare(find(season, "total").value, "at least 77");
        compare(find(season, "part").text,
                "Lost on 14 Jul, before 25 Jul: it missed the last moths. So there is no band: bands are for whole seasons.");
    }

    function test_anEndThatWasAMistakeIsTakenBack() {
        const at = standing();
        at.world.keepRecord("trap", { end_day: "2026-07-14", end_reason: "season_over", washed: true }, at.trap);
        const page = open(at, "life");
        mouseClick(find(find(page, "ended"), "noticeAction"));
        const sheet = find(page, "runOnSheet");
        tryVerify(() => sheet.opened);
        mouseClick(find(sheet.contentItem, "yes"));
        tryVerify(() => find(page, "acts").visible);
        compare(fields(at, at.trap, ["end_day", "end_reason", "washed"]), "undefined undefined undefined");
    }

    function test_replacingEndsThisOneAndSetsUpTheNext() {
        const at = standing();
        const page = open(at, "life");
        tap(page, "replace");
        const sheet = find(page, "replaceSheet");
        tryVerify(() => sheet.opened);
        mouseClick(find(sheet.contentItem, "yes"));
        tryVerify(() => pageOn(at) !== page);
        compare(fields(at, at.trap, ["end_day", "end_reason"]), "2026-07-14 replaced");
        compare(pageOn(at).subject, "replace/" + at.trap, "the set-up knows which one it replaces");
    }
}
