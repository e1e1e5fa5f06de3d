// SPDX-License-Identifier: MIT
// Districts by week, this year against the last ones at the same date, and the bands of all years.
import QtQuick
import QtTest

RegionStory {
    id: test

    name: "Years"

    // The year before: ten traps of Tom's, whole seasons.
    function withLastYear() {
        const at = region();
        const world = at.world;
        const season = world.keepRecord("season", { year: 2025 });
        const keeper = world.memberId("Wren");
        for (let i = 0; i < 10; ++i) {
            const site = world.keepRecord("site", { season, keeper, name: "Old field " + i });
            const trap = world.keepRecord("trap", { site, season, tag: "old " + i, pest: "bertha-armyworm", trap_type: world.fieldOf(at.trap, "trap_type"),
                    set_day: "2025-06-05", end_day: "2025-08-10", end_reason: "season_over" });
            for (const [day, moths] of [["2025-06-30", 10], ["2025-07-14", 20 * i], ["2025-07-28", 300], ["2025-08-10", 1]])
                world.keepRecord("visit", { trap, day, outcome: "counted", pest: moths, emptied: true });
        }
        return at;
    }

    function years(at, width, height) {
        const page = shown(at, "years", width, height);
        tryVerify(() => page.years.isRead && page.years.rows.count > 0, 10000);
        wait(0);
        return page;
    }

    function pickView(page, view) {
        tap(find(page, "views"), "chip_" + view);
        compare(page.years.view, view);
        wait(0);
    }

    function row(page, number) {
        let found = null;
        tryVerify(() => (found = findChild(page, "row" + number)) !== null);
        return found;
    }

    function facts(page, number) {
        return row(page, number).flags.map(words => words.replace("\t", ": "));
    }

    function test_districtsByWeek() {
        const at = region();
        const page = years(at);
        compare(page.years.heading, "29 Jun to 5 Jul", "the last week whose nights anybody counted");
        compare(row(page, 0).title, "All districts");
        compare(row(page, 1).title, "East bench");
        compare(row(page, 2).title, "No district");
        verify(facts(page, 1)[0].startsWith("Median trap: "), facts(page, 1).join());
        verify(facts(page, 1).includes("Counted in full: 12 of 12"), facts(page, 1).join());
        verify(find(row(page, 1), "highest").text.startsWith("Highest: Field 24"), find(row(page, 1), "highest").text);
        verify(!find(page, "weekAfter").enabled);
        tap(page, "weekBefore");
        compare(page.years.heading, "22 Jun to 28 Jun");
        keyClick("n");
        compare(page.years.heading, "29 Jun to 5 Jul");
        page.list.positionViewAtIndex(1, ListView.Contain);
        wait(0);
        tap(row(page, 1), "highest");
        tryVerify(() => pageOn(at) !== page);
    }

    function test_thisYearAgainstTheLast() {
        const at = withLastYear();
        const page = years(at);
        pickView(page, "years");
        compare(page.years.heading, "Catch up to 14 Jul of each year");
        compare(row(page, 0).title, "All traps");
        // 10 and 0, 20 ... 180 more by 14 July 2025; nothing of what came after.
        compare(facts(page, 0)[1], "2025: median 100 · 10 of 10");
        verify(facts(page, 0)[0].startsWith("2026: median "));
        pickView(page, "years");
        tap(find(page, "by"), "chip_keeper");
        compare(row(page, 1).title, "Wren");
        compare(facts(page, 1)[1], "2025: median 100 · 10 of 10");
    }

    function test_outbreaks() {
        const at = withLastYear();
        const page = years(at);
        pickView(page, "bands");
        compare(row(page, 0).title, "2026, so far");
        compare(row(page, 1).title, "2025");
        // 311, 331 ... 491: all of them from 300 to 899.
        compare(facts(page, 1).slice(0, 2).map(words => words.split(": ")[1]), ["0", "10"]);
        const picture = find(page, "bands");
        verify(picture.visible && picture.height > 60);
        verify(picture.picture.description.includes("2025: 0 "), picture.picture.description);
    }

    function test_theTableToCopy() {
        const at = withLastYear();
        const page = years(at);
        pickView(page, "years");
        tap(page, "copy");
        verify(page.years.copied);
        verify(!find(page, "weeksBasis").visible);
        pickView(page, "weeks");
        verify(find(page, "weeksBasis").visible, "why a bulletin says otherwise");
        verify(!page.years.copied);
        keyClick("c");
        verify(page.years.copied);
        keyClick(Qt.Key_Escape);
        compare(find(at.main.contentItem, "pages").depth, 0);
    }

    function test_beforeThereIsATrap() {
        const world = createTemporaryObject(worlds, test, { today: "2026-07-14" });
        const page = shown({ world }, "years");
        tryVerify(() => find(page, "doing").text === "No trap stands yet.");
        verify(!find(page, "copy").visible);
    }
}
