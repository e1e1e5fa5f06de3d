// SPDX-License-Identifier: MIT
// A trap is kept working: raised, lure and strip renewed, moved. As a person does it, and what is really kept of it.
import QtQuick
import QtTest

LifeStory {
    id: test

    name: "TrapLife"

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
                for (const act of ["", "raise", "lure", "strip", "move", "lend", "end"])
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
        compare(walk.lasting(pageOn(at), wait).join("\n"), "");
        at.world.app.settings.textScale = 1;
    }
}
