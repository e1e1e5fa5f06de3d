// SPDX-License-Identifier: MIT
// The pages that differ by the kind of trap, in each size, by day and by night, in small and large type.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Theme

PestStory {
    id: test

    readonly property Walk walk: Walk {}
    readonly property Contrast contrast: Contrast {}
    property list<string> found

    name: "PestsFit"

    function cleanup() {
        Theme.dark = false;
        Theme.textScale = 1;
    }

    function look(where: string) {
        wait(0);
        for (const complaint of walk.lasting(test.page, wait).concat(contrast.complaints(test.page)))
            test.found.push(where + ": " + complaint);
    }

    function test_everyKindOfTrap_data() {
        const rows = [];
        const kinds = [["diamondback-moth", "delta"], ["sunflower-moth", "wing"], ["corn-earworm", "nylon-cone"],
            ["western-bean-cutworm", "milk-jug"], ["western-bean-cutworm", "green-bucket"]];
        for (const [pest, type] of kinds)
            for (const [w, h] of [[360, 640], [390, 844], [1280, 800]])
                for (const scale of [1, 2])
                    for (const light of ["day", "night"]) // one kind in every look, the others in every size
                        if (type === "delta" || (scale === 2) === (light === "night"))
                            rows.push({ tag: [type, w + "x" + h, scale * 100 + " %", light].join(", "), pest, type, w, h, scale, light });
        return rows;
    }

    // A season that its pests' rules have something to say of.
    function test_everyKindOfTrap(row) {
        test.found = [];
        test.world = createTemporaryObject(test.runningWorld, test);
        test.world.app.settings.light = row.light === "night" ? DeviceSettings.Night : DeviceSettings.Day;
        test.world.app.settings.textScale = row.scale;
        const site = test.world.keepRecord("site", { season: test.world.recordsOf("season")[0], name: "Elm corner" });
        const trap = test.world.keepRecord("trap", { site, tag: "1", pest: row.pest, trap_type: row.type, set_day: "2026-05-20",
                protocol_version: "2026-1", lure_in: true, entrance_mm: 1200, canopy_mm: 400, height_rule: "follow_canopy" });
        for (const [day, moths] of [["2026-05-27", 130], ["2026-06-01", 60], ["2026-06-02", 12]])
            test.world.addCount(trap, day, moths);
        for (const [route, subject] of [["season", trap], ["life", "raise:" + trap], ["life", "lure:" + trap], ["", ""], ["protocol", row.pest]]) {
            open(route, subject, row.w, row.h); // without a route: Today
            look(route + " " + subject.split(":")[0]);
        }
        open("visit", trap, row.w, row.h);
        count(1);
        for (const step of ["trap", "lure", "done"]) {
            next(step);
            look(step);
        }
        compare(test.found, []);
    }

    function test_theStartOffersAllPests_data() {
        const rows = [];
        for (const [w, h] of [[360, 640], [390, 844], [1280, 800]])
            for (const scale of [1, 2])
                rows.push({ tag: w + "x" + h + ", " + scale * 100 + " %", w, h, scale });
        return rows;
    }

    function test_theStartOffersAllPests(row) {
        test.found = [];
        test.world = createTemporaryObject(test.freshWorld, test);
        test.world.app.settings.textScale = row.scale;
        test.main = test.world.openWindow(row.w, row.h);
        waitForRendering(test.page);
        look("start");
        touch(test.page, "chip_wheat-midge");
        compare(findIn(test.page, "pest").chosen, "wheat-midge");
        look("start, a pest chosen");
        compare(test.found, []);
    }
}
