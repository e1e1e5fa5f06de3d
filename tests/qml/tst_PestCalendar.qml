// SPDX-License-Identifier: MIT
// The calendar of moth and crop by taps and keys: what it says with temperatures, and what it says without.
import QtQuick
import QtTest
import Duskrow.Testing

SeasonStory {
    id: test

    name: "PestCalendar"

    CalendarStory {
        id: records
    }

    // From the season's page, as a person comes here.
    function calendarOf(at) {
        const season = open(at, "season");
        tap(season, "pestCalendar");
        const page = pageOn(at);
        verify(find(page, "strip"));
        tryVerify(() => page.model.isRead, 20000);
        return page;
    }

    function entries(page) {
        const found = {};
        for (let i = 0; findChild(page, "entry" + i); ++i) {
            const entry = findChild(page, "entry" + i);
            found[entry.title] = [entry.besides, entry.detail, entry.flags.join(" ")];
        }
        return found;
    }

    function test_aSeasonWithTemperatures() {
        const at = made("2026-07-23");
        records.fill(at.world, at.trap, true);
        const page = calendarOf(at);
        const said = entries(page);
        compare(said["Traps up"].slice(0, 2).join("; "), "measured; 3 Jun");
        compare(said["First catch"].slice(0, 2).join("; "), "measured; 10 Jun to 17 Jun");
        compare(said["Peak of the flight"][0], "measured", "the counts have gone down again");
        verify(said["Peak of the flight"][1].includes("at the widest"), said["Peak of the flight"][1]);
        // Two weeks after the peak, and two weeks long.
        verify(said["Scouting for larvae"][2].includes("14 to 28 days after the peak"), said["Scouting for larvae"][2]);
        verify(said["Scouting for larvae"][2].includes("common practice, no source"));
        verify(said["Larvae of damaging size"][2].includes("28 to 42 days after the peak"));
        verify(said["Cutting"][2].includes("moved by the stage that was seen last"), said["Cutting"][2]);
        verify(said["Last day for control by the label"][2].includes("7 days of the label"));
        verify(find(page, "strip").visible);
        verify(find(page, "strip").Accessible.name.includes("Traps up: 3 Jun, measured"));
        tryVerify(() => find(page, "strip").height > 200, 5000, "the strip has found its height");
        verify(page.model.warmth[0].includes("measured at Airport"), page.model.warmth[0]);
        verify(page.model.warmth.join(" ").includes("Its day ends at"), page.model.warmth.join(" "));
        verify(page.model.gaps.join(" ").includes("nobody has published at what sum"), "no sum is invented");
        verify(find(page, "caution").text.includes("Read the label"));
        verify(find(page, "caution").text.includes("licensed adviser"));
    }

    function test_theFlightByDaysAndByWarmth() {
        const at = made("2026-07-23");
        records.fill(at.world, at.trap, true);
        const page = calendarOf(at);
        tap(page, "chip_flight");
        tryVerify(() => find(page, "fan").visible);
        const title = find(page, "flightTitle");
        verify(/^Flight of this trap: (around its peak|past its peak)$/.test(title.text), title.text);
        // Of one trap no part is said, neither as a number nor as a range.
        verify(!page.model.flightLines.join(" ").includes("%"), page.model.flightLines.join("\n"));
        verify(/^Peak: \d+ Jul to \d+ Jul$/.test(page.model.flightLines[1]), page.model.flightLines[1]);
        verify(find(page, "caution").visible, "it stands with the flight as well");
        const byDays = page.model.flightLines.join();
        const chip = find(page, "chip_warmth");
        chip.forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Space);
        compare(page.model.axis, "warmth");
        verify(page.model.flightLines.join() !== byDays);
        verify(/^Peak: \d+ to \d+ degree-days \(°C\), about \d+ Jul to \d+ (Jul|Aug)$/.test(page.model.flightLines[1]), page.model.flightLines[1]);
        verify(find(page, "fan").Accessible.name.startsWith("The flight by warmth"));
        keyClick(Qt.Key_Left);
        keyClick(Qt.Key_Return);
        compare(page.model.axis, "days");
        compare(page.model.flightLines.join(), byDays);
    }

    function test_theDistrictTogetherSaysARange() {
        const at = made("2026-07-23");
        records.fill(at.world, at.trap, false);
        const page = calendarOf(at);
        tap(page, "chip_flight");
        tap(page, "chip_district");
        tryVerify(() => page.model.flightTitle.startsWith("Flight of the district"), 20000);
        verify(/^By the last count \d+ to \d+ % of the flight was over\.$/.test(page.model.flightLines[0]), page.model.flightLines[0]);
        verify(page.model.flightMethod[0].includes("14 counts of 2 traps"), page.model.flightMethod[0]);
        tap(page, "chip_trap");
        verify(page.model.flightTitle.startsWith("Flight of this trap"));
    }

    function test_withoutTemperaturesItSaysWhyAndTheWayOut() {
        const at = made("2026-07-23");
        records.fill(at.world, at.trap, false);
        const page = calendarOf(at);
        verify(page.model.gaps[0].startsWith("No warmth: the programme has no weather station"), page.model.gaps[0]);
        verify(page.model.gaps[0].includes("duskrow-tool temperatures"));
        verify(!find(page, "warmth").visible);
        verify(entries(page)["Peak of the flight"], "the rest is said all the same");
        tap(page, "chip_flight");
        verify(!find(page, "axis").visible, "no axis of warmth without temperatures");
    }

    // Nothing but a trap: all is expected, and what is missing is asked for.
    function test_aTrapWithoutCountsIsAllExpected() {
        const at = made("2026-06-05");
        const page = calendarOf(at);
        const said = entries(page);
        compare(said["Traps up"][0], "measured");
        compare(said["First catch"].slice(0, 2).join("; "), "expected; 10 Jun to 17 Jun");
        compare(said["Peak of the flight"][0], "expected");
        verify(said["Peak of the flight"][2].includes("Source: "), said["Peak of the flight"][2]);
        verify(!said["Cutting"]);
        verify(page.model.gaps.join(" ").includes("nobody has written down when this field was seeded"));
        tap(page, "chip_flight");
        compare(find(page, "flightTitle").text, "Flight of this trap: too little counted to say");
        verify(!find(page, "whose").visible, "a field of no district");
    }

    function test_aCountThatComesInMovesTheCalendar() {
        const at = made("2026-07-23");
        records.fill(at.world, at.trap, false);
        const page = calendarOf(at);
        const before = entries(page)["Peak of the flight"].join();
        const revision = page.model.revision;
        at.world.addCount(at.trap, "2026-07-23", 900);
        tryVerify(() => page.model.revision > revision, 20000);
        verify(entries(page)["Peak of the flight"].join() !== before);
        keyClick(Qt.Key_Escape);
        tryVerify(() => findChild(pageOn(at), "countNow"), 2000, "back on the season");
    }

    function test_aTrapThatIsNotThereIsSaid() {
        const at = made("2026-07-14");
        const page = open(at, "pestCalendar", "01890a5d-ac96-774b-bcce-b302099a8057");
        verify(find(page, "trouble").visible);
    }
}
