// SPDX-License-Identifier: MIT
// The page of a trap's season: what stands beside the total, where it leads, and that everything fits.
import QtQuick
import QtTest

SeasonStory {
    id: test

    name: "SeasonPage"

    Walk {
        id: walk
    }

    function test_aVisitOpensItsHistoryAndTheTrapItsLife() {
        const at = made("2026-07-14");
        at.world.addCount(at.trap, "2026-07-07", 77);
        const season = open(at, "season");
        shown(season, "visits");
        tap(season, "row0");
        compare(find(pageOn(at), "pageHead").title, "Visit of Tuesday 7 July 2026");
        tap(pageOn(at), "back");
        tap(pageOn(at), "life");
        compare(find(pageOn(at), "pageHead").subtitle, "Life of this trap");
        tap(pageOn(at), "back");
        tap(pageOn(at), "countNow");
        verify(findChild(pageOn(at), "pad"), "the count is open");
    }

    function test_aTrapThatIsNotThereIsSaid() {
        const at = made("2026-07-14");
        const season = open(at, "season", "01890a5d-ac96-774b-bcce-b302099a8057");
        verify(find(season, "trouble").visible);
        verify(!find(season, "countNow").visible);
    }

    function test_everythingFits_data() {
        const found = [];
        for (const [width, height] of [[360, 640], [390, 844], [1280, 800]]) {
            for (const scale of [1, 2]) {
                for (const view of ["chart", "visits", "weeks"])
                    found.push({ tag: width + " wide, " + scale * 100 + " %, " + view, width, height, scale, view });
            }
        }
        return found;
    }

    function test_everythingFits(row) {
        const at = made("2026-08-05", "2026-06-30");
        at.world.app.settings.textScale = row.scale;
        at.world.addCount(at.trap, "2026-07-07", 1240);
        addVisit(at, "2026-07-14", { pest: 100, state: "fallen", unsure: 4 });
        addVisit(at, "2026-07-21", { outcome: "could_not_count", reason: "flooded" });
        at.world.keepRecord("visit", { withdrawn: "typed at the wrong trap" }, addVisit(at, "2026-07-22", { pest: 3 }));
        const season = open(at, "season", at.trap, row.width, row.height);
        shown(season, row.view);
        compare(walk.lasting(season, wait).join("\n"), "");
        at.world.app.settings.textScale = 1;
    }

    function test_aPairShowsTwoTotalsAndNoSum() {
        const at = made("2026-07-14");
        const other = at.world.addTrap("Slough corner", "bertha 2", "2026-06-03", 52.2, -106.6);
        at.world.keepRecord("trap", { paired_with: at.trap }, other);
        at.world.keepRecord("trap", { site: at.world.fieldOf(at.trap, "site") }, other);
        at.world.addCount(at.trap, "2026-07-07", 120);
        at.world.addCount(other, "2026-07-07", 81);
        const season = open(at, "season");
        verify(find(season, "pair").visible);
        compare(season.model.pairLabels.join(), "This one, bertha 1,bertha 2");
        compare(season.model.pairTotals.join(), "120 moths so far,81 moths so far");
        compare(find(season, "total").value, "120");
    }

    function test_aMothThatWaitsForANameIsNotInTheTotal() {
        const at = made("2026-07-14");
        const visit = addVisit(at, "2026-07-07", { pest: 20, unsure: 3 });
        const sample = at.world.keepRecord("sample", { visit, trap: at.trap, moths: 3, state: "kept" });
        let season = open(at, "season");
        compare(find(season, "total").value, "20");
        compare(season.model.remarks.join(), "Not in the total: 3 moths that nobody has named yet.");
        at.world.keepRecord("sample", { state: "named", pest: 2 }, sample);
        tryCompare(find(season, "total"), "value", "22");
        compare(rows(shown(season, "visits"))[0][2].split("\n")[2], "counted 20, named samples add 2");
    }
}
