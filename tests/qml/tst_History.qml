// SPDX-License-Identifier: MIT
// Corrections: what was kept first stays readable, what is withdrawn stays listed, and both can be undone.
import QtQuick
import QtTest

SeasonStory {
    id: test

    name: "History"

    Walk {
        id: walk
    }

    // The words on one card of the history, from above to below.
    function words(page, name) {
        const found = [];
        const read = item => {
            if (item.visible && "paintedWidth" in item)
                found.push(item.text);
            for (let i = 0; i < item.children.length; ++i)
                read(item.children[i]);
        };
        read(find(page, name));
        return found;
    }

    function counted() {
        const at = made("2026-07-14");
        at.world.addCount(at.trap, "2026-06-30", 182);
        at.visit = addVisit(at, "2026-07-07", { pest: 77, lure_there: true, strip_there: true });
        return at;
    }

    function test_aCorrectedCountShowsTheOriginalInItsHistory() {
        const at = counted();
        open(at, "season");
        tap(pageOn(at), "chip_visits");
        waitForRendering(pageOn(at), 500);
        tap(pageOn(at), "row0");
        tap(pageOn(at), "correct");
        for (let i = 0; i < 3; ++i)
            tap(pageOn(at), "tally_-1");
        for (let step = 0; step < 3; ++step)
            tap(pageOn(at), "next");
        tap(pageOn(at), "keep");
        tryVerify(() => at.world.fieldOf(at.visit, "pest") === 74, 5000, "the correction is kept");
        compare(at.world.changesOf(at.visit), 2, "beside what it corrects");
        const history = open(at, "history", "visit/" + at.visit);
        const newest = words(history, "change0");
        compare(newest[0], "Wren corrected it");
        compare(newest[1], "14 Jul 2026, 19:30");
        verify(newest.includes("The count of the pest: 77 moths → 74 moths"), newest.join("\n"));
        verify(words(history, "change1").includes("The count of the pest: 77 moths"));
        compare(find(open(at, "season"), "total").value, "256");
    }

    function test_aWithdrawnVisitLeavesTheTotalAndStaysListed() {
        const at = counted();
        const history = open(at, "history", "visit/" + at.visit);
        tap(history, "withdraw");
        const sheet = find(history, "withdrawSheet");
        tryVerify(() => sheet.opened);
        mouseClick(find(sheet.contentItem, "withdrawYes"));
        verify(find(sheet.contentItem, "reason").error.length > 0, "a reason is asked for");
        compare(at.world.changesOf(at.visit), 1);
        for (const c of "typed at the wrong trap")
            keyClick(c);
        mouseClick(find(sheet.contentItem, "withdrawYes"));
        tryVerify(() => find(history, "withdrawn").visible);
        compare(find(history, "withdrawn").text, "typed at the wrong trap");
        compare(at.world.fieldOf(at.visit, "withdrawn"), "typed at the wrong trap");
        tryVerify(() => !sheet.visible);
        compare(words(history, "change0")[0], "Wren withdrew it");
        verify(!find(history, "correct").visible, "what is withdrawn is brought back before it is corrected");

        let season = open(at, "season");
        compare(find(season, "total").value, "182");
        tap(season, "chip_visits");
        const list = find(season, "visits");
        compare(rows(list)[1], ["Tuesday 7 July", "77 moths", "withdrawn: typed at the wrong trap"]);
        verify(find(list, "row1").strikeout);
        waitForRendering(season, 500);
        tap(season, "row1");
        tap(pageOn(at), "bringBack");
        tryVerify(() => !find(pageOn(at), "withdrawn").visible);
        compare(words(pageOn(at), "change0")[0], "Wren let it stand again");
        compare(find(open(at, "season"), "total").value, "259");
        compare(at.world.changesOf(at.visit), 3, "nothing was deleted");
    }

    function test_leavingItAsItIsChangesNothing() {
        const at = counted();
        const history = open(at, "history", "visit/" + at.visit);
        tap(history, "withdraw");
        const sheet = find(history, "withdrawSheet");
        tryVerify(() => sheet.opened);
        mouseClick(find(sheet.contentItem, "withdrawNo"));
        tryVerify(() => !sheet.visible);
        compare(at.world.changesOf(at.visit), 1);
        verify(find(history, "correct").visible);
    }

    function test_everyKindOfRecordHasItsHistory_data() {
        return [
                    { tag: "trap", title: "Trap", line: "The trap type: Green bucket trap (funnel trap)" },
                    { tag: "site", title: "Slough corner", line: "The crop: “canola”" },
                    { tag: "service", title: "Lure changed", line: "The lot of the lure: “K-77”" },
                    { tag: "loan", title: "Lent to Ida", line: "The last day: Monday 20 July 2026" },
                    { tag: "sample", title: "Sample B1-3", line: "The number in the sample: 3 moths" }
                ];
    }

    function test_everyKindOfRecordHasItsHistory(row) {
        const at = counted();
        const ids = {
            trap: at.trap,
            site: at.world.fieldOf(at.trap, "site"),
            service: at.world.keepRecord("service", { trap: at.trap, day: "2026-07-01", what: "lure", lure_lot: "K-77" }),
            loan: at.world.keepRecord("loan", { trap: at.trap, borrower: "Ida", from_day: "2026-07-01", until_day: "2026-07-20" }),
            sample: at.world.keepRecord("sample", { trap: at.trap, visit: at.visit, number: "B1-3", moths: 3, state: "kept" })
        };
        const history = open(at, "history", row.tag + "/" + ids[row.tag]);
        compare(find(history, "pageHead").title, row.title);
        compare(find(history, "pageHead").subtitle, "Slough corner · bertha 1");
        verify(words(history, "change0").includes(row.line), words(history, "change0").join("\n"));
        verify(find(history, "correct").visible);
    }

    function test_aRecordThatIsNotThereIsSaid() {
        const at = counted();
        const history = open(at, "history", "visit/" + at.trap);
        verify(find(history, "trouble").visible, "a trap is no visit");
        verify(!find(history, "withdraw").visible);
    }

    function test_aServiceIsCorrectedInTheFormThatMadeIt() {
        const at = counted();
        const service = at.world.keepRecord("service", { trap: at.trap, day: "2026-07-01", at_ms: 1782900000000, offset_min: 0,
                what: "raise", entrance_mm: 1150 });
        open(at, "history", "service/" + service);
        tap(pageOn(at), "correct");
        compare(find(pageOn(at), "pageHead").title, "Raise the trap");
        compare(find(find(pageOn(at), "entrance"), "box").text, "115");
        type(pageOn(at), "entrance", "125");
        tap(pageOn(at), "keep");
        tryVerify(() => at.world.fieldOf(service, "entrance_mm") === 1250);
        compare(at.world.fieldOf(service, "day"), "2026-07-01", "and nothing else changed");
        tryVerify(() => find(pageOn(at), "pageHead").title === "Trap raised", 5000, "back at the history");
        verify(words(pageOn(at), "change0").includes("The height of the entrance: 115 cm → 125 cm"));
    }

    function test_everythingFits_data() {
        const found = [];
        for (const [width, height] of [[360, 640], [390, 844], [1280, 800]]) {
            for (const scale of [1, 2])
                found.push({ tag: width + " wide, " + scale * 100 + " %", width, height, scale });
        }
        return found;
    }

    function test_everythingFits(row) {
        const at = counted();
        at.world.app.settings.textScale = row.scale;
        at.world.keepRecord("visit", { pest: 74, remark: "A long remark about the bucket, the rain and the road. ".repeat(8) }, at.visit);
        const history = open(at, "history", "visit/" + at.visit, row.width, row.height);
        compare(walk.lasting(history, wait).join("\n"), "");
        tap(history, "withdraw");
        const sheet = find(history, "withdrawSheet");
        tryVerify(() => sheet.opened);
        waitForRendering(sheet.contentItem, 500);
        compare(walk.lasting(sheet.contentItem, wait).join("\n"), "");
        at.world.app.settings.textScale = 1;
    }
}
