// SPDX-License-Identifier: MIT
// A weekly visit from the first tap to "kept on this phone", and what a kill of the app leaves of it.
import QtQuick
import QtTest
import Duskrow.Testing

VisitStory {
    id: test

    name: "Visit"

    function linesHave(text) {
        const lines = find("number").lines;
        for (let i = 0; i < lines.length; ++i) {
            if (lines[i] === text)
                return true;
        }
        return false;
    }

    function test_aVisitByTapsIsKept() {
        begin();
        count(2);
        mouseClick(find("tally_10"));
        mouseClick(find("tally_5"));
        mouseClick(find("tally_-1"));
        compare(find("number").value, "16");
        verify(linesHave("2.3 a night"));
        verify(linesHave("so far 212 → 228"));
        const before = world.changes();
        next("trap");
        next("lure");
        next("done");
        compare(find("headline").text, "16 moths over 7 nights");
        compare(find("meaning").text, "2.3 a night · 228 so far · flight not over yet");
        compare(world.changes(), before, "nothing is kept before the last tap");
        const id = keep();
        verify(find("kept").text.includes("16 moths over 7 nights: kept on this phone"));
        compare(find("nextCount").text, "Next count: Monday 20 July");
        compare(world.changes(), before + 1, "one visit, no service");
        const fields = ["trap", "day", "outcome", "pest", "emptied", "state", "lure_there", "strip_there", "moths_alive"];
        compare(fields.map(field => kept(id, field)), [trap, "2026-07-14", "counted", 16, true, "fine", true, true, false]);
        compare(["not_it", "unsure", "bees", "canopy_mm", "entrance_mm", "reason", "at_least", "sprayed"].map(field => kept(id, field)
                                                                                                              === undefined), Array(8).fill(true),
                "what nobody observed is not kept");
        verify(!world.hasDraft("visit/" + trap), "the draft went with the keep");
    }

    function test_twoHundredTapsAreTwoHundredMoths() {
        begin();
        count(200);
        compare(find("number").value, "200");
        compare(kept(goThrough(), "pest"), 200);
    }

    function test_zeroIsACountAndConfirmed() {
        begin();
        compare(find("number").value, "–", "nothing counted yet is not zero");
        mouseClick(find("next"));
        compare(visit().step, "count");
        compare(inSheet("zeroSheet", "title").text, "None caught?");
        tapInSheet("zeroSheet", "yes");
        compare(find("number").value, "0");
        const id = goThrough();
        compare([kept(id, "outcome"), kept(id, "pest")], ["counted", 0]);
    }

    function test_couldNotCountHasNoNumber_data() {
        return [
                    { tag: "fallen", emptied: true, state: "fallen", atLeast: true, seen: true },
                    { tag: "flooded", emptied: true, state: "flooded", atLeast: true, seen: true },
                    { tag: "spoiled", emptied: true, state: "fine", atLeast: undefined, seen: true },
                    { tag: "missing", emptied: false, state: "missing", atLeast: true, seen: false },
                    { tag: "access", emptied: false, state: undefined, atLeast: undefined, seen: false },
                    { tag: "other", emptied: false, state: "fine", atLeast: undefined, seen: true }
                ];
    }

    function test_couldNotCountHasNoNumber(row) {
        begin();
        count(3);
        tap("other");
        tapInSheet("otherSheet", "couldNot");
        tapInSheet("couldNotSheet", "chip_" + row.tag);
        verify(find("couldNotWords").visible);
        if (row.seen) {
            next("trap");
            next("lure");
        }
        next("done");
        compare(find("headline").text, "Could not count");
        const id = keep();
        compare(["outcome", "reason", "emptied"].map(field => kept(id, field)), ["could_not_count", row.tag, row.emptied]);
        compare([kept(id, "pest"), kept(id, "state"), kept(id, "at_least")], [undefined, row.state, row.atLeast]);
    }

    function test_leavingKeepsNothing() {
        begin();
        const before = world.changes();
        count(3);
        mouseClick(find("back"));
        compare(world.changes(), before);
        verify(world.hasDraft("visit/" + trap), "but the draft waits");
    }

    function test_aKillLosesNoTap() {
        begin();
        count(7);
        mouseClick(find("bin_unsure"));
        count(1);
        next("trap");
        chip("state", "flooded");
        world.flush();
        world.restart();
        open("visit", trap);
        compare(visit().step, "trap", "it goes on where it was");
        compare(within("state", "chip_flooded").isChosen, true);
        mouseClick(find("back"));
        compare(find("number").value, "1", "in the bin that was in hand");
        mouseClick(find("bin_pest"));
        compare(find("number").value, "7");
        tap("undo");
        tap("undo");
        compare(find("number").value, "7", "the state and the unsure moth are taken back first");
        tap("undo");
        compare(find("number").value, "6", "undo reaches back over the kill");
        const id = goThrough();
        compare([kept(id, "pest"), kept(id, "unsure"), kept(id, "state")], [6, undefined, "fine"]);
    }

    function test_startingOver() {
        begin();
        count(7);
        tap("other");
        tapInSheet("otherSheet", "startOver");
        compare(find("number").value, "–");
        verify(!find("undo").visible);
        verify(!world.hasDraft("visit/" + trap));
    }

    function test_aMissedWeekIsOneLongerCount() {
        test.world = createTemporaryObject(test.worldType, test);
        test.trap = world.addTrap("Elm", "1", "2026-06-30", 52.1, -106.6);
        open("visit", trap);
        count(28);
        verify(linesHave("2.0 a night"));
        compare(find("longInterval").text, "One count over 14 nights: the total stands.");
    }

    function test_theRemarkAndTheDay() {
        begin();
        count(5);
        next("trap");
        next("lure");
        next("done");
        mouseClick(within("day", "dayBefore"));
        compare(find("headline").text, "5 moths over 6 nights");
        enter("remark", "wind from the west ");
        const id = keep();
        compare([kept(id, "day"), kept(id, "remark")], ["2026-07-13", "wind from the west"]);
        compare(kept(id, "at_ms") % 86400000, Date.UTC(2026, 6, 14, 19, 30) % 86400000 + kept(id, "at_ms") % 1000, "the hour stays");
    }
}
