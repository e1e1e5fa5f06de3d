// SPDX-License-Identifier: MIT
// The season of one trap as its keeper reads it, against sums done by hand.
import QtQuick
import QtTest

SeasonStory {
    id: test

    name: "TrapSeason"

    function total(page) {
        const number = find(page, "total");
        return [number.value].concat(number.lines).join("; ");
    }

    function test_aMissedWeekIsALongerIntervalAndTheTotalStands() {
        const at = made("2026-07-14");
        at.world.addCount(at.trap, "2026-06-09", 12);
        at.world.addCount(at.trap, "2026-06-16", 30);
        at.world.addCount(at.trap, "2026-06-30", 140);
        at.world.addCount(at.trap, "2026-07-07", 77);
        const season = open(at, "season");
        compare(total(season), "259; moths so far; flight rising");
        compare(rows(shown(season, "visits")), [
                    ["Tuesday 7 July", "77 moths", "7 nights · 11.0 a night · 259 so far"],
                    ["Tuesday 30 June", "140 moths", "14 nights · 10.0 a night · 182 so far\none count over 14 nights"],
                    ["Tuesday 16 June", "30 moths", "7 nights · 4.3 a night · 42 so far"],
                    ["Tuesday 9 June", "12 moths", "6 nights · 2.0 a night · 12 so far"]
                ]);
        verify(!find(season, "band").visible, "a catch so far has no band");
        verify(find(season, "standing").text.startsWith("Bands are for whole seasons"));
        verify(find(season, "caution").text.includes("never decides a spray"));
        verify(find(season, "countNow").visible);
    }

    // Weeks run from Monday to Sunday here. 12 moths of the nights 3 to 8 June: 10 in the first week, 2 in the
    // second; 30 of the nights 9 to 15 June: 25.7 in the second, 4.3 in the third.
    function test_weeksThatACountCrossesAreSharedOutByNightsAndSaySo() {
        const at = made("2026-06-17");
        at.world.addCount(at.trap, "2026-06-09", 12);
        at.world.addCount(at.trap, "2026-06-16", 30);
        const derived = "\nderived: shared out by nights";
        compare(rows(shown(open(at, "season"), "weeks")), [
                    ["15 Jun to 21 Jun", "about 4 moths", "1 of 7 nights counted · 4.3 a night" + derived],
                    ["8 Jun to 14 Jun", "about 28 moths", "7 of 7 nights counted · 4.0 a night" + derived],
                    ["1 Jun to 7 Jun", "about 10 moths", "5 of 7 nights counted · 2.0 a night" + derived]
                ]);
    }

    function test_aWeekCountedAsItRunsIsNotDerived() {
        const at = made("2026-06-17", "2026-06-01");
        at.world.addCount(at.trap, "2026-06-08", 14);
        compare(rows(shown(open(at, "season"), "weeks")), [["1 Jun to 7 Jun", "14 moths", "7 of 7 nights counted · 2.0 a night"]]);
    }

    function test_whatCouldNotBeCountedIsNeitherZeroNorLost() {
        const at = made("2026-06-24");
        at.world.addCount(at.trap, "2026-06-09", 18);
        addVisit(at, "2026-06-16", { outcome: "could_not_count", reason: "access", emptied: false });
        at.world.addCount(at.trap, "2026-06-23", 28);
        const season = open(at, "season");
        compare(total(season), "46; moths so far; flight near its highest so far");
        compare(rows(shown(season, "visits")), [
                    ["Tuesday 23 June", "28 moths", "14 nights · 2.0 a night · 46 so far\none count over 14 nights"],
                    ["Tuesday 16 June", "could not count", "7 nights · 18 so far\ncould not get to the trap"],
                    ["Tuesday 9 June", "18 moths", "6 nights · 3.0 a night · 18 so far"]
                ]);
    }

    function test_aTrapThatFellGivesAtLeastAndNoRate() {
        const at = made("2026-06-24");
        at.world.addCount(at.trap, "2026-06-09", 40);
        addVisit(at, "2026-06-16", { pest: 100, state: "fallen" });
        const season = open(at, "season");
        compare(total(season), "at least 140; moths so far; flight rising");
        compare(rows(shown(season, "visits"))[0],
                ["Tuesday 16 June", "100 moths", "7 nights · 140 so far\nat least: trap fallen"]);
    }

    function test_noneCaughtIsACountAndNoCountIsNoNumber() {
        const at = made("2026-06-12");
        compare(total(open(at, "season")), "–; no counts yet; flight not known yet");
        at.world.addCount(at.trap, "2026-06-09", 0);
        const season = open(at, "season");
        compare(total(season), "0; moths so far; no moths yet");
        compare(rows(shown(season, "visits")), [["Tuesday 9 June", "none caught", "6 nights · 0.0 a night · 0 so far"]]);
    }

    function test_partOfTheFlightTakesNoBand_data() {
        return [{
                    tag: "came late", setDay: "2026-06-15", last: "2026-07-28", end: "",
                    total: "at least 950; moths, part of the flight only; flight rising",
                    why: "Set up on 15 Jun, after 14 Jun: it may have missed the first moths. So there is no band: bands are for whole seasons."
                }, {
                    tag: "ended early", setDay: "2026-06-03", last: "2026-07-21", end: "2026-07-21",
                    total: "at least 950; moths, part of the flight only",
                    why: "Ended on 21 Jul, before 25 Jul: it missed the last moths. So there is no band: bands are for whole seasons."
                }, {
                    tag: "not counted to the end", setDay: "2026-06-03", last: "2026-07-24", end: "",
                    total: "at least 950; moths, part of the flight only",
                    why: "Last counted on 24 Jul, before 25 Jul: the last moths are not in. So there is no band: bands are for whole seasons."
                }];
    }

    function test_partOfTheFlightTakesNoBand(row) {
        const at = made("2026-08-04", row.setDay);
        at.world.addCount(at.trap, "2026-06-30", 150);
        at.world.addCount(at.trap, row.last, 800);
        if (row.end.length > 0)
            at.world.keepRecord("trap", { end_day: row.end, end_reason: "season_over" }, at.trap);
        const season = open(at, "season");
        compare(total(season), row.total);
        verify(find(season, "part").visible);
        compare(find(season, "part").text, row.why);
        verify(!find(season, "band").visible);
    }

    // The edges of the protocol for green bucket traps: 300, 900, 1200; an edge belongs to the higher band.
    function test_aWholeSeasonTakesTheHigherBandOnAnEdge_data() {
        return [
                    { tag: "299", moths: 299, band: 1, label: "Low", span: "0 to 299 moths in a whole season." },
                    { tag: "300", moths: 300, band: 2, label: "Uncertain", span: "300 to 899 moths in a whole season." },
                    { tag: "899", moths: 899, band: 2, label: "Uncertain", span: "300 to 899 moths in a whole season." },
                    { tag: "900", moths: 900, band: 3, label: "Moderate", span: "900 to 1,199 moths in a whole season." },
                    { tag: "1200", moths: 1200, band: 4, label: "High", span: "1,200 moths or more in a whole season." }
                ];
    }

    function test_aWholeSeasonTakesTheHigherBandOnAnEdge(row) {
        const at = made("2026-08-04");
        at.world.addCount(at.trap, "2026-06-30", 100);
        at.world.addCount(at.trap, "2026-07-28", row.moths - 100);
        const season = open(at, "season");
        compare(find(season, "total").lines.join("; "), "moths in the whole season; flight over");
        verify(find(season, "band").visible);
        compare(find(season, "band").band, row.band);
        compare(find(season, "band").name, row.label);
        verify(find(season, "bandMeaning").text.startsWith(row.span), find(season, "bandMeaning").text);
        verify(!find(season, "countNow").visible, "the flight is over");
        tap(season, "takeDown");
        compare(find(pageOn(at), "pageHead").title, "End of the trap");
    }

    function test_theSameCatchHasNoBandWhileTheFlightGoesOn() {
        const at = made("2026-07-28");
        at.world.addCount(at.trap, "2026-06-30", 100);
        at.world.addCount(at.trap, "2026-07-28", 200);
        verify(!find(open(at, "season"), "band").visible);
    }

    function test_anotherTypeOfTrapBorrowsNoBand() {
        const at = made("2026-08-04");
        at.world.keepRecord("trap", { trap_type: "multicolour-bucket" }, at.trap);
        at.world.addCount(at.trap, "2026-07-28", 500);
        const season = open(at, "season");
        verify(!find(season, "band").visible);
        verify(find(season, "standing").text.includes("nobody has published bands for this type of trap"));
    }

    // By 7 July 40, 45, 50, 55 and 60 of 100 moths were in. A tenth of five in a straight line: 42; nine tenths: 58.
    // 120 / 0.58 = 206.9 and 120 / 0.42 = 285.7.
    function test_pastSeasonsGiveALikelyRange() {
        const at = made("2026-07-08");
        for (let i = 0; i < 5; ++i) {
            const year = 2021 + i % 2;
            const season = at.world.keepRecord("season", { year, week_start: 1, count_day: 1 });
            const trap = at.world.keepRecord("trap", { season, tag: "old " + i, pest: "bertha-armyworm",
                    trap_type: "green-bucket", set_day: year + "-06-03" });
            at.world.addCount(trap, year + "-07-07", 40 + 5 * i);
            at.world.addCount(trap, year + "-07-28", 60 - 5 * i);
        }
        at.world.addCount(at.trap, "2026-07-07", 120);
        const season = open(at, "season");
        tryCompare(find(season, "likely"), "text",
                   "Season likely 206 to 286. The likely range comes from 5 past trap seasons of 2 years. It knows nothing of this year’s weather.");
        compare(total(season), "120; moths so far; flight about half over");
        verify(find(season, "chart").Accessible.name.includes("season likely 206 to 286"));
    }
}
