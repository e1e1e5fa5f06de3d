// SPDX-License-Identifier: MIT
// Temperatures of a station come in from a table, by taps and keys: looked at, set right, kept; the same twice adds nothing.
import QtQuick
import QtTest
import Duskrow.Testing

ExchangeStory {
    id: test

    name: "Temperatures"

    visible: true
    width: 400
    height: 400

    readonly property string good: "date,tmin (C),tmax (C)\n2026-06-01,4,17\n2026-06-02,5.5,19\n2026-06-07,6,22\n"

    function looking(at, text) {
        const page = show(at, "temperatures");
        paste(page, "file", at.world.putFile("airport.csv", text));
        tap(page, "look");
        tryVerify(() => !page.model.isReading && page.model.isSeen);
        wait(0);
        return page;
    }

    function settled(page) {
        tryVerify(() => !page.model.isReading);
        wait(0);
    }

    function factsOf(page) {
        const all = {};
        for (let i = 0; i < page.model.facts.count; ++i)
            all[find(page, "fact" + i).label] = find(page, "fact" + i).value;
        return all;
    }

    function bring(page) {
        settled(page);
        tap(page, "bring");
        tryVerify(() => !page.model.isRunning && page.model.doneLine.length > 0, 20000);
        settled(page);
    }

    function test_lookedAtAndKept() {
        const at = made();
        const before = at.world.changes();
        const page = looking(at, test.good);
        compare(page.model.unit, "c", "a heading says it");
        compare(factsOf(page)["Days in the file"], "3, from Monday 1 June 2026 to Sunday 7 June 2026");
        compare(factsOf(page)["Nothing for"], "4 days, from 3 Jun to 6 Jun", "a long gap is told, and no zero");
        verify(find(page, "missing").visible, "it is not known of which station they are");
        verify(!find(page, "bring").enabled);
        type(page, "station", "Airport");
        type(page, "latitude", "52.2");
        type(page, "longitude", "-106.7");
        type(page, "dayEnds", "09:00");
        settled(page);
        verify(!find(page, "missing").visible, page.model.missing);
        compare(factsOf(page)["New days"], "3");
        compare(factsOf(page)["New station"], "Airport");
        compare(at.world.changes(), before, "nothing is kept while it is looked at");
        bring(page);
        compare(at.world.recordsOf("temperature").length, 3);
        const station = at.world.recordsOf("station")[0];
        compare([at.world.fieldOf("station", station, "name"), at.world.fieldOf("station", station, "day_ends_minute")], ["Airport", 540]);
        compare(factsOf(page)["Days that are here already"], "3");
        verify(!find(page, "bring").enabled, "the same file twice adds nothing");
        const highest = at.world.recordsOf("temperature").map(id => at.world.fieldOf("temperature", id, "maximum_mc")).sort();
        compare(highest, [17000, 19000, 22000]);
    }

    function test_fahrenheitAndColumnsByHand() {
        const at = made();
        const page = looking(at, "when,bottom,air,top\n2026-06-01,40,1,68\n2026-06-02,41,1,70\n");
        tap(find(page, "column_date"), "chip_1");
        settled(page);
        tap(find(page, "column_minimum"), "chip_2");
        settled(page);
        tap(find(page, "column_maximum"), "chip_4");
        settled(page);
        tap(find(page, "unit"), "chip_f");
        type(page, "station", "Elm");
        bring(page);
        compare(at.world.recordsOf("temperature").length, 2);
        verify(at.world.recordsOf("temperature").map(id => at.world.fieldOf("temperature", id, "maximum_mc")).includes(20000), "68 °F are 20 °C");
    }

    function test_wrongRowsAreToldWithTheirLines() {
        const at = made();
        const page = looking(at, "date,tmin (C),tmax (C)\n2026-06-01,14,7\n2026-06-02,5,19\nnever,1,2\n");
        type(page, "station", "Airport");
        settled(page);
        compare(page.model.refused.count, 2);
        verify(find(page, "refused0").text.includes("2"), find(page, "refused0").text);
        compare(factsOf(page)["New days"], "1");
        type(page, "latitude", "north");
        settled(page);
        verify(find(page, "missing").visible, "a place that is none is told");
        verify(!find(page, "bring").enabled);
    }

    function test_aFileThatIsNone() {
        const at = made();
        const page = show(at, "temperatures");
        paste(page, "file", at.world.folder() + "/nowhere.csv");
        tap(page, "look");
        tryVerify(() => find(page, "trouble").visible);
        verify(page.model.trouble.includes("nowhere.csv"));
    }
}
