// SPDX-License-Identifier: MIT
// Trap, lure and strip on a visit: heights, raising, what was changed, what was sprayed.
import QtQuick
import QtTest

VisitStory {
    id: test

    name: "VisitTrap"

    function toTrap() {
        begin();
        count(5);
        next("trap");
    }

    function toLure() {
        toTrap();
        next("lure");
        tap("details");
    }

    function finish(): string {
        next("done");
        return keep();
    }

    function test_heightsAndTheEstimateOfReaching() {
        toTrap();
        compare(find("stake").clearanceText, "70 cm clear");
        verify(!find("advice").visible, "nothing is said of a height that nobody measured");
        enter("canopy", "95");
        compare(find("stake").clearanceText, "5 cm clear");
        // 65 cm in 42 days: 5 cm more in a little over 3 days.
        compare(find("advice").text, "It grew 65 cm in 42 days. At that pace it reaches the entrance about 18 Jul (estimate): raise it now.");
        compare(find("raise").text, "I raised it to 115 cm");
        tap("raise");
        compare(find("stake").clearanceText, "20 cm clear");
        verify(!find("raise").visible);
        next("lure");
        const id = finish();
        compare([kept(id, "canopy_mm"), kept(id, "entrance_mm")], [950, 1150]);
        const services = world.recordsOf("service");
        compare(services.length, 1);
        compare(["trap", "what", "day", "entrance_mm"].map(field => kept(services[0], field)), [trap, "raise", "2026-07-14", 1150]);
    }

    function test_theSameHeightIsOneTap() {
        toTrap();
        compare(find("still").text, "Still 30 cm");
        tap("still");
        compare(find("advice").text, "It has not grown in 42 days.");
        next("lure");
        compare(kept(finish(), "canopy_mm"), 300);
        compare(world.recordsOf("service").length, 0);
    }

    function test_afterFloweringHeightsAreNotAsked() {
        toTrap();
        verify(!find("floweringOver").visible, "not plausible at 30 cm");
        enter("canopy", "120");
        tap("floweringOver");
        verify(!find("canopy").visible);
        next("lure");
        compare(kept(finish(), "flowering_over"), true);
        open("visit", trap);
        count(1);
        next("trap");
        verify(!find("canopy").visible, "nor at the next visit");
        verify(find("heightsNotAsked").visible);
    }

    function test_aTrapThatFailedCountsAtLeast() {
        toTrap();
        chip("state", "damaged");
        verify(find("atLeast").text.includes("at least"));
        next("lure");
        next("done");
        compare(find("headline").text, "At least 5 moths over 7 nights");
        const id = keep();
        compare([kept(id, "state"), kept(id, "at_least")], ["damaged", true]);
    }

    function test_aNewLureAfterItsReminder() {
        toLure();
        tap("lureThere");
        tap("lureChanged");
        verify(find("handling").visible, "the reminder stands before the lure");
        verify(!find("lureLot").visible);
        tap("handlingRead");
        enter("lureLot", "K 12");
        enter("lureExpiry", "2026-05-01");
        verify(find("expired").visible, "an old lure is said, not refused");
        finish();
        const services = world.recordsOf("service");
        compare(services.length, 1);
        compare(["what", "lure_lot", "lure_expiry", "handling_read"].map(field => kept(services[0], field)), ["lure", "K 12", "2026-05-01", true]);
        compare(kept(world.recordsOf("visit").pop(), "lure_there"), false);
        const other = world.addTrap("Elm", "2", "2026-06-02", 52.3, -106.6);
        open("visit", other);
        count(1);
        next("trap");
        next("lure");
        tap("details");
        tap("lureChanged");
        verify(!find("handling").visible, "once a day is enough");
        verify(find("lureLot").visible);
    }

    function test_livingMothsAskForANewStrip() {
        toLure();
        tap("mothsAlive");
        verify(find("changeStrip").visible);
        verify(find("stripCautions").text.includes("nitrile gloves"));
        tap("stripChanged");
        verify(!find("changeStrip").visible);
        const id = finish();
        compare(kept(id, "moths_alive"), true);
        compare(kept(world.recordsOf("service")[0], "what"), "strip");
    }

    function test_notEmptiedIsSaid() {
        toLure();
        tap("emptied");
        verify(find("emptied").detail.includes("stays in the trap"));
        compare(kept(finish(), "emptied"), false);
    }

    function test_sprayedWithItsReEntry() {
        toLure();
        tap("sprayed");
        mouseClick(findChild(inSheet("sprayedSheet", "sprayedChips"), "chip_yes"));
        const what = findChild(inSheet("sprayedSheet", "sprayedWhat"), "box");
        mouseClick(what);
        for (const c of "soap")
            keyClick(c);
        mouseClick(findChild(inSheet("sprayedSheet", "sprayedDay"), "dayBefore"));
        mouseClick(findChild(inSheet("sprayedSheet", "reentryHours"), "plus"));
        mouseClick(findChild(inSheet("sprayedSheet", "reentryHours"), "plus"));
        compare(inSheet("sprayedSheet", "reentry").text, "Stay out until the end of Tuesday 14 July: the day of spraying and the label's 24 h.");
        tapInSheet("sprayedSheet", "sprayedDone");
        compare(find("sprayed").subtitle, "Sprayed with soap, 13 Jul");
        const id = finish();
        compare(["sprayed", "sprayed_what", "sprayed_day", "reentry_hours"].map(field => kept(id, field)), [true, "soap", "2026-07-13", 24]);
    }

    function test_undoOfEveryStep() {
        toLure();
        tap("emptied");
        tap("mothsAlive");
        tap("undo");
        tap("undo");
        verify(find("emptied").checked);
        verify(!find("mothsAlive").checked);
    }
}
