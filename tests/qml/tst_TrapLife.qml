// SPDX-License-Identifier: MIT
// The life of one trap, act by act as a person does it, and what is really kept of it.
import QtQuick
import QtTest
import Duskrow.Testing

SeasonStory {
    id: test

    name: "TrapLife"

    Walk {
        id: walk
    }

    function standing(setDay) {
        const at = made("2026-07-14", setDay);
        at.world.addCount(at.trap, "2026-07-07", 77);
        return at;
    }

    function title(at) {
        return find(pageOn(at), "pageHead").title;
    }

    function begin(at, act) {
        open(at, "life");
        tap(pageOn(at), act);
        waitForRendering(pageOn(at), 500);
    }

    // Keeps the act; true once its page has made room for the overview.
    function keep(at) {
        tap(pageOn(at), "keep");
        tryVerify(() => findChild(pageOn(at), "acts"), 5000, "kept, and back at the overview");
        return pageOn(at);
    }

    function only(at, kind) {
        const ids = at.world.recordsOf(kind);
        compare(ids.length, 1, "one " + kind);
        return ids[0];
    }

    function fields(at, id, names) {
        return names.map(name => String(at.world.fieldOf(id, name))).join(" ");
    }

    // A device without a receiver asks for typing by itself.
    function typeThePlace(at) {
        if (find(pageOn(at), "latitude").visible)
            return;
        tap(pageOn(at), "typeOrMeasure");
        waitForRendering(pageOn(at), 500);
    }

    function done(page) {
        const found = [];
        for (let i = 0; findChild(page, "done" + i); ++i) {
            const row = findChild(page, "done" + i);
            found.push([row.title, row.subtitle, row.rightText].filter(part => part.length > 0).join(", "));
        }
        return found;
    }

    function test_raisingIsDrawnAndKept() {
        const at = standing();
        addVisit(at, "2026-07-13", { pest: 3, canopy_mm: 950 });
        begin(at, "raise");
        compare(find(pageOn(at), "stake").clearanceText, "5 cm clear");
        type(pageOn(at), "entrance", "120");
        compare(find(pageOn(at), "stake").entranceMm, 1200);
        compare(find(pageOn(at), "stake").clearanceText, "25 cm clear");
        const page = keep(at);
        compare(fields(at, only(at, "service"), ["what", "entrance_mm", "day", "trap"]), "raise 1200 2026-07-14 " + at.trap);
        compare(done(page), ["Entrance set to 120 cm, 14 Jul", "Set up, 3 Jun"]);
        begin(at, "raise");
        compare(find(find(pageOn(at), "entrance"), "box").text, "120", "the next raise starts from here");
    }

    function test_aHeightThatIsNoNumberIsRefusedInWords() {
        const at = standing();
        begin(at, "raise");
        type(pageOn(at), "entrance", "tall");
        verify(!find(pageOn(at), "keep").enabled);
        compare(at.world.recordsOf("service").length, 0);
    }

    function test_theLureIsNotTouchedBeforeTheReminder() {
        const at = standing();
        begin(at, "lure");
        compare(title(at), "Before you open the lure");
        verify(find(pageOn(at), "handling").visible);
        verify(!find(pageOn(at), "lot").visible);
        verify(!find(pageOn(at), "keep").visible);
        tap(pageOn(at), "handlingRead");
        waitForRendering(pageOn(at), 500);
        type(pageOn(at), "lot", "K-77");
        type(pageOn(at), "expiry", "2027-03-01");
        keep(at);
        compare(fields(at, only(at, "service"), ["what", "lure_lot", "lure_expiry", "handling_read"]), "lure K-77 2027-03-01 true");
        begin(at, "lure");
        compare(title(at), "New lure", "once a day is enough");
    }

    function test_theStripComesWithItsCautions() {
        const at = standing();
        begin(at, "strip");
        verify(find(pageOn(at), "cautions").lines.some(line => line.includes("nitrile gloves")));
        keep(at);
        compare(fields(at, only(at, "service"), ["what", "day"]), "strip 2026-07-14");
    }

    function test_movingKeepsTheTrapAndSaysHowFar_data() {
        return [{ tag: "typed", fixes: 0 }, { tag: "by fixes", fixes: 6 }];
    }

    // A minute of latitude is 1852 m on the sphere; 0.001 degree on the ellipsoid at 52 degrees is 111 m.
    function test_movingKeepsTheTrapAndSaysHowFar(row) {
        const at = standing();
        if (row.fixes > 0)
            at.world.standAt(52.101, -106.6, row.fixes);
        begin(at, "move");
        if (row.fixes === 0) {
            typeThePlace(at);
            type(pageOn(at), "latitude", "52.101");
            type(pageOn(at), "longitude", "-106.6");
        }
        tryVerify(() => find(pageOn(at), "takePlace").enabled);
        tap(pageOn(at), "takePlace");
        tryVerify(() => find(pageOn(at), "keep").visible);
        compare(find(pageOn(at), "distance").lines[0], "111 m from where it stood");
        const page = keep(at);
        const service = only(at, "service");
        compare(fields(at, service, ["what", "fix_method"]), "move " + (row.fixes > 0 ? "satellite" : "typed"));
        fuzzyCompare(at.world.fieldOf(service, "lat_e7"), 521010000, 200);
        compare(at.world.fieldOf(at.trap, "lat_e7"), 521000000, "the set-up stays as it was");
        compare(done(page)[0], "Moved 111 m, 14 Jul");
    }

    function test_aPlaceThatIsNoneIsRefusedInWords() {
        const at = standing();
        begin(at, "move");
        typeThePlace(at);
        type(pageOn(at), "latitude", "north");
        tap(pageOn(at), "takePlace");
        verify(find(pageOn(at), "latitude").error.length > 0);
        verify(!find(pageOn(at), "keep").visible);
    }

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
        compare(done(pageOn(at))[0], "Ended: season over, still to do: bucket washed and stored, 14 Jul");
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

    function test_aFactIsCorrectedAndNothingElseIsTouched() {
        const at = standing();
        at.world.keepRecord("trap", { entrance_mm: 1003, lure_lot: " K 1 " }, at.trap);
        begin(at, "correct");
        compare(find(find(pageOn(at), "entrance"), "box").text, "100");
        type(pageOn(at), "tag", "bertha 7");
        type(pageOn(at), "canopy", "35");
        find(find(pageOn(at), "gate"), "box").forceActiveFocus();
        for (const c of "north gate")
            keyClick(c);
        keep(at);
        compare(fields(at, at.trap, ["tag", "canopy_mm", "entrance_mm"]), "bertha 7 350 1003");
        compare(at.world.fieldOf(at.trap, "lure_lot"), " K 1 ");
        compare(at.world.fieldOf(at.world.fieldOf(at.trap, "site"), "gate"), "north gate");
        const history = open(at, "history", "trap/" + at.trap);
        compare(find(history, "change0").flags.join("; "), "The tag: “bertha 1” → “bertha 7”; The height of the canopy: 30 cm → 35 cm");
    }

    function test_whatWasHalfEnteredIsThereAfterACrash() {
        const at = standing();
        begin(at, "lend");
        type(pageOn(at), "borrower", "Ida");
        at.world.restart();
        open(at, "life");
        compare(title(at), "Lend the trap");
        compare(find(find(pageOn(at), "borrower"), "box").text, "Ida");
        tap(pageOn(at), "back");
        compare(title(at), "Slough corner · bertha 1");
        at.world.flush();
        compare(at.world.hasDraft("life/" + at.trap), false, "leaving it means leaving it");
    }

    function test_everyActFits_data() {
        const found = [];
        for (const [width, height] of [[360, 640], [390, 844], [1280, 800]]) {
            for (const scale of [1, 2]) {
                for (const act of ["", "raise", "lure", "strip", "move", "lend", "end", "correct"])
                    found.push({ tag: width + " wide, " + scale * 100 + " %, " + act, width, height, scale, act });
            }
        }
        return found;
    }

    function test_everyActFits(row) {
        const at = standing();
        at.world.app.settings.textScale = row.scale;
        at.world.keepRecord("loan", { trap: at.trap, borrower: "Ida of the long river road", from_day: "2026-07-10", until_day: "2026-07-20" });
        open(at, "life", (row.act.length > 0 ? row.act + ":" : "") + at.trap, row.width, row.height);
        compare(walk.complaints(pageOn(at)).join("\n"), "");
        at.world.app.settings.textScale = 1;
    }
}
