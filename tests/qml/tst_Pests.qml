// SPDX-License-Identifier: MIT
// Other pests, as a person meets them: a programme begun for one, one taken into a programme that runs, traps of other
// kinds set up and visited, and what the season's page says of them.
import QtQuick
import QtTest

PestStory {
    id: test

    name: "Pests"

    function test_aProgrammeIsBegunForAnyPest_data() {
        return [
                    { tag: "diamondback-moth", type: "delta", shape: "delta", strip: false },
                    { tag: "wheat-midge", type: "delta", shape: "delta", strip: false },
                    { tag: "black-cutworm", type: "wing", shape: "wing", strip: false },
                    { tag: "corn-earworm", type: "nylon-cone", shape: "cone", strip: false },
                    { tag: "western-bean-cutworm", type: "green-bucket", shape: "bucket", strip: true }
                ];
    }

    function test_aProgrammeIsBegunForAnyPest(row) {
        beginFor(row.tag);
        let shape = "";
        const bertha = now => checkNothingOf(/bertha/i, now);
        const pages = setUp({ lure: page => shape = findIn(page, "trapPicture").kind }, bertha);
        compare(shape, row.shape, "the picture is of this kind of trap");
        compare(pages.includes("strip"), row.strip);
        compare(test.world.fieldOf(newestTrap(), "pest"), row.tag);
        compare(test.world.fieldOf(newestTrap(), "trap_type"), row.type);
        for (const route of ["today", "traps", "visit", "season", "life"]) {
            goTo(route, newestTrap());
            bertha(route);
        }
    }

    // Wheat midges are no moths: no screen on their way says so.
    function test_midgesAreMidges() {
        beginFor("wheat-midge");
        const other = /bertha|moth/i;
        setUp({}, now => checkNothingOf(other, now));
        test.trap = newestTrap();
        test.world.addCount(test.trap, "2026-06-05", 4);
        test.world.addCount(test.trap, "2026-06-08", 31);
        for (const route of ["today", "traps", "season", "life", "desk", "typing", "map", "years", "samples", "round", "larvae"]) {
            goTo(route, ["season", "life"].includes(route) ? test.trap : "");
            checkNothingOf(other, route);
        }
        open("visit", test.trap);
        checkNothingOf(other, "count");
        verify(!find("guide").visible, "there are no marks to look for");
        count(3);
        compare(find("number").caption, "midges in the trap");
        mouseClick(find("bin_unsure"));
        count(1);
        compare(find("number").caption, "midges nobody is sure of: bag them");
        checkNothingOf(other, "unsure");
        next("trap");
        checkNothingOf(other, "trap");
        next("lure");
        checkNothingOf(other, "lure");
        next("done");
        compare(find("headline").text.split(" over ")[0], "3 midges");
        checkNothingOf(other, "done");
        keep();
        checkNothingOf(other, "kept");
        open("season", test.trap);
        const lines = findIn(test.pageOnTop(), "total");
        compare(lines.value, "38");
        compare(lines.lines[0], "midges so far");
        verify(rules().includes("38 midges so far. More than 10: go and scout."), rules());
        verify(findIn(test.pageOnTop(), "standing").text.includes("Nobody has published bands"));
        verify(!findIn(test.pageOnTop(), "band").visible, "no band is made up");
        verify(findIn(test.pageOnTop(), "caution").text.includes("never decides a spray"));
        checkNothingOf(other, "season");
        open("history", "visit/" + test.world.recordsOf("visit")[2]);
        checkNothingOf(other, "history");
        verify(said(test.page).some(line => line.includes("midges")), "the history names them");
    }

    function test_anotherPestIsTakenIntoAProgrammeThatRuns() {
        test.world = createTemporaryObject(test.runningWorld, test);
        open("programme", "");
        const page = test.pageOnTop();
        verify(!findIn(page, "pest-bertha-armyworm").enabled, "a pest in use stays");
        touch(page, "pest-diamondback-moth");
        verify(findIn(page, "pest-diamondback-moth").checked);
        const before = test.world.changes();
        touch(page, "keep");
        tryVerify(() => test.world.changes() === before + 1, 5000, "one record: a protocol in use");
        setUp({ trap: page => touch(findIn(page, "pest"), "chip_diamondback-moth") });
        compare(test.world.fieldOf(newestTrap(), "pest"), "diamondback-moth");
        compare(test.world.fieldOf(newestTrap(), "trap_type"), "delta");
        compare(test.world.fieldOf(newestTrap(), "strip_in"), undefined, "a delta trap has no strip");
        test.world.addCount(newestTrap(), "2026-06-10", 120);
        open("season", newestTrap());
        verify(rules().includes("120 moths in 7 nights"), rules());
        verify(rules().includes("More than 100 a week: scout"), rules());
        verify(rules().includes("Moths and larvae go together weakly"), "what must be known to read it");
        verify(rules("fieldRules").includes("from 100 to 150 larvae on a square metre"), rules("fieldRules"));
        verify(findIn(test.pageOnTop(), "caution").text.includes("never decides a spray"));
    }

    // The same catch means something else in another kind of trap.
    function test_twoKindsOfTrapHaveTheirOwnBands() {
        beginFor("western-bean-cutworm");
        setUp({});
        const bucket = newestTrap();
        setUp({ trap: page => touch(findIn(page, "trapType"), "chip_milk-jug") });
        const jug = newestTrap();
        compare([test.world.fieldOf(bucket, "trap_type"), test.world.fieldOf(jug, "trap_type")], ["green-bucket", "milk-jug"]);
        for (const trap of [bucket, jug])
            for (const [day, moths] of [["2026-07-08", 300], ["2026-07-15", 450], ["2026-07-22", 90], ["2026-07-29", 20]])
                test.world.addCount(trap, day, moths);
        open("season", jug);
        verify(rules().includes("milk jug") && rules().includes("Moderate"), rules());
        verify(!rules().includes("green bucket"), rules());
        open("season", bucket);
        verify(rules().includes("green bucket") && rules().includes("from 1,200: Moderate"), rules());
        verify(!rules().includes("milk jug"), rules());
        verify(rules("fieldRules").includes("Look at 20 plants at each of 5 stops."), rules("fieldRules"));
        verify(!findIn(test.pageOnTop(), "band").visible);
        verify(findIn(test.pageOnTop(), "standing").text.includes("not for a whole season"));
    }
}
