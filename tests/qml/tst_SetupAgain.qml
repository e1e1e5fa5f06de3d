// SPDX-License-Identifier: MIT
// Further traps: at the same field, in the stead of an earlier one, late in the season; photographs; every page in
// every size.
import QtQuick
import QtTest
import Duskrow.App

SetupHand {
    id: test

    name: "SetupAgain"
    when: windowShown

    Walk {
        id: walk
    }

    function checkPage(name: string) {
        waitForRendering(page, 200);
        compare(walk.lasting(find("setupFrame"), wait).join("; "), "", name);
    }

    function test_aSecondTrapFromTheList() {
        makeWorld();
        const first = world.addTrap("Poplar bend", "7", "2026-06-02", 52.158, -106.67);
        const site = newest("site");
        open("");
        compare(find("newOrKnown").chosen, "new");
        pick("newOrKnown", "known");
        stay();
        verify(shown("step"));
        tap("site_0");
        next("yes"); // nobody recorded it at the first trap
        enter("landowner", "Ada");
        next("place");
        stand(52.1581, -106.67);
        next("around");
        compare(find("neighbour_0").label, "Trap 7, Poplar bend");
        compare(find("neighbour_0").value.replace(/\s/, " "), "11 m");
        verify(/same species: 11\sm is too close/.test(find("concern").text), "said, and not in the way");
        next("trap");
        compare(findChild(find("tag"), "box").text, "8");
        pick("pairedWith", first);
        goTo("kept");
        compare(world.siteIds().length, 1);
        checkFields("site", { name: "Poplar bend", landowner: "Ada", agreed_day: "2026-06-03" });
        checkFields("trap", { site, tag: "8", paired_with: first });
    }

    function test_aTrapTooCloseIsSaidAndMayStand() {
        makeWorld();
        world.addTrap("Poplar bend", "7", "2026-06-02", 52.1577, -106.6702);
        open("");
        goTo("around");
        verify(/same species: 22\sm is too close/.test(find("concern").text), find("concern").text);
        next("trap");
        enter("tag", "7");
        verify(findChild(find("tag"), "box").activeFocus);
        goTo("kept");
        checkFields("trap", { tag: "7" });
    }

    function test_aTrapInTheSteadOfAnother() {
        makeWorld();
        const earlier = world.addTrap("Poplar bend", "7", "2026-06-01", 52.158, -106.67);
        const site = newest("site");
        world.keepRecord("trap", { height_rule: "fixed", canopy_mm: 200, edge_distance_mm: 2000 }, earlier);
        open("replace/" + earlier);
        compare(at(), "place", "field and yes are known");
        compare(find("coordinates").text, "52.15800, -106.67000");
        next("around");
        compare(findChild(find("edge"), "box").text, "2");
        verify(!shown("neighbours"), "the one that is replaced does not count");
        for (const name of ["trap", "handling", "lure", "strip", "stake"])
            next(name);
        enter("canopy", "30");
        verify(find("growth").text.indexOf("This is an estimate.") > 0, find("growth").text);
        next("last");
        next("kept");
        checkFields("trap", { replaces: earlier, site, lat_e7: 521580000, accuracy_mm: 5000, height_rule: "fixed", tag: "8",
            edge_distance_mm: 2000, canopy_mm: 300 });
        compare(world.fieldOf(earlier, "end_reason"), undefined, "ending it is another act");
    }

    function test_aPhotograph() {
        begin();
        goTo("last");
        const file = world.folder() + "/trap.png";
        grabImage(page).save(file);
        const picker = find("picker");
        picker.active = true;
        picker.item.selectedFile = "file://" + world.folder() + "/keys";
        picker.item.accepted();
        tryVerify(() => find("trouble").visible);
        verify(find("trouble").text.endsWith("Choose a picture file of at most 32 MB."), find("trouble").text);
        picker.item.selectedFile = "file://" + file;
        picker.item.accepted();
        tryVerify(() => shown("photo") && !find("trouble").visible);
        tryCompare(find("photo"), "status", Image.Ready);
        tap("dropPhoto");
        tryVerify(() => !shown("photo"));
        picker.item.accepted();
        tryVerify(() => shown("photo"));
        enter("remark", "By the slough");
        next("kept");
        compare(world.fieldOf(newest("trap"), "photo").length, 64);
        checkFields("trap", { remark: "By the slough" });
    }

    function test_whatTheSeasonCanStillShow_data() {
        return [{ tag: "in time", day: "2026-06-14", says: "" }, { tag: "later", day: "2026-06-15", says: "Traps usually stand by" },
            { tag: "last day", day: "2026-07-07", says: "Traps usually stand by" },
            { tag: "too late", day: "2026-07-08", says: "From Wednesday 8 July on it is late" }];
    }

    function test_whatTheSeasonCanStillShow(row) {
        test.day = row.day;
        begin();
        compare(shown("lateness"), row.says.length > 0);
        verify(find("lateness").text.startsWith(row.says), find("lateness").text);
    }

    function test_eachPageInEachSize_data() {
        const rows = [];
        for (const [width, height] of [[360, 640], [390, 844], [1280, 800]]) {
            for (const scale of [1, 2]) {
                for (const dark of [false, true])
                    rows.push({ tag: width + "x" + height + " at " + scale + (dark ? " by night" : ""), width, height, scale, dark });
            }
        }
        return rows;
    }

    function test_eachPageInEachSize(row) {
        test.day = "2026-07-09";
        makeWorld();
        world.addTrap("Poplar bend", "7", "2026-06-02", 52.1577, -106.6702);
        world.app.settings.textScale = row.scale;
        world.app.settings.light = row.dark ? DeviceSettings.Night : DeviceSettings.Day;
        open("", row.width, row.height);
        pick("newOrKnown", "known");
        checkPage("known field");
        pick("newOrKnown", "new");
        stay();
        checkPage("no name");
        for (const name of ["yes", "place", "around", "trap", "handling", "lure", "strip", "stake", "last", "kept"]) {
            goTo(name);
            if (name === "stake")
                enter("canopy", "120");
            checkPage(name);
        }
    }
}
