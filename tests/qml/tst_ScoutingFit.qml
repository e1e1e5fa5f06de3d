// SPDX-License-Identifier: MIT
// Every screen of scouting and deciding in each size, light and type.
import QtQuick
import QtTest

ScoutingStory {
    id: test

    name: "ScoutingFit"

    function test_everythingFits_data() {
        const rows = [];
        for (const [width, height] of [[360, 640], [390, 844], [1280, 800]]) {
            for (const scale of [1, 2]) {
                for (const light of ["day", "night"]) {
                    for (const page of ["walk", "how", "frames", "answer", "money", "timing", "working"])
                        rows.push({ tag: page + " " + width + "x" + height + " " + scale * 100 + " " + light, page, width, height, scale, light });
                }
            }
        }
        return rows;
    }

    function test_everythingFits(row) {
        const at = begun();
        at.world.app.settings.textScale = row.scale;
        at.world.app.settings.light = row.light === "night" ? 2 : 1;
        const walk = at.world.keepRecord("walk", { site: at.site, season: at.world.fieldOf(at.site, "season"), pest: "bertha-armyworm",
                protocol_version: "2026-1", day: "2026-07-14", at_ms: 1784000000000, offset_min: 0, stage_bbch: 75, frame_cm2: 2500 });
        at.walk = walk;
        if (row.page !== "how")
            addFrames(at, [4, 9, 2, 15, 0, 6]);
        at.world.keepRecord("decision", { walk, day: "2026-07-14", cost: "12", cost_unit: "CAD/ac", price: "10", price_unit: "CAD/bu",
                label_days: 7, cutting_day: "2026-08-20" });
        const route = row.page === "walk" ? "walk" : row.page === "frames" || row.page === "how" ? "frames" : "decide";
        open(at, route, route === "walk" ? at.trap : walk, row.width, row.height);
        if (route === "decide")
            tap(pageOn(at), "chip_" + row.page);
        settle(at);
        compare(test.walk.lasting(pageOn(at), wait).join("\n"), "");
        at.world.app.settings.textScale = 1;
        at.world.app.settings.light = 1;
    }
}
