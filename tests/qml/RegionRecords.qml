// SPDX-License-Identifier: MIT
// A district whose catches rise from west to east, beside whatever a world holds already.
import QtQuick

QtObject {
    // 24 traps in four columns over 75 by 90 km: 5 moths in the west, 900 in the east. The ids of the traps.
    function fill(world: var): var {
        const traps = [];
        for (let i = 0; i < 24; ++i) {
            const column = i % 4;
            const row = Math.floor(i / 4);
            const trap = world.addTrap("Field " + (i + 1), "bertha " + (i + 10), "2026-06-03", 51.6 + row * 0.15, -106.9 + column * 0.35);
            world.addCount(trap, "2026-06-29", [2, 40, 180, 420][column] + row);
            world.addCount(trap, "2026-07-06", [3, 60, 220, 480][column] + row);
            traps.push(trap);
        }
        const district = world.keepRecord("district", { name: "East bench" });
        for (let i = 0; i < 24; ++i) {
            if (i % 4 > 1)
                world.keepRecord("site", { district }, world.fieldOf(traps[i], "site"));
        }
        return traps;
    }
}
