// SPDX-License-Identifier: MIT
// What the tests of the calendar share: a field in the middle of its season, with or without temperatures.
import QtQuick

QtObject {
    // Nine counts of the flight, with one week that could not be counted.
    readonly property list<string> days: ["2026-06-10", "2026-06-17", "2026-06-24", "2026-07-01", "2026-07-08", "2026-07-15", "2026-07-22"]
    readonly property list<int> moths: [0, 4, 17, 52, 96, 131, 64]

    function fill(world, trap, hasWarmth) {
        for (let i = 0; i < days.length; ++i)
            world.addCount(trap, days[i], moths[i]);
        const site = world.fieldOf(trap, "site");
        const season = world.fieldOf(site, "season");
        const district = world.keepRecord("district", { name: "North Slough" });
        world.keepRecord("site", { seeded_day: "2026-05-16", crop: "canola", district }, site);
        const other = world.addTrap("Poplar bend", "bertha 2", "2026-06-03", 52.2, -106.5);
        world.keepRecord("site", { district }, world.fieldOf(other, "site"));
        for (let i = 0; i < days.length; ++i)
            world.addCount(other, days[i], Math.round(moths[i] * 0.7));
        const walk = world.keepRecord("walk", { site, season, pest: "bertha-armyworm", protocol_version: "2026-1", day: "2026-07-20",
                at_ms: 1784500000000, offset_min: 0, stage_bbch: 65, frame_cm2: 2500 });
        world.keepRecord("decision", { walk, day: "2026-07-20", cost: "12", cost_unit: "CAD/ac", price: "10", price_unit: "CAD/bu",
                label_days: 7 });
        if (hasWarmth)
            world.addWarmth("Airport", 52.15, -106.7, 2023, "2026-07-21");
        return other;
    }
}
