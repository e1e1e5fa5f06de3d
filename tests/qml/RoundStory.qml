// SPDX-License-Identifier: MIT
// What the tests of the round share: traps to be counted, a place to stand, and the order that is shown.
import QtQuick

SeasonStory {
    id: roundStory

    // Three traps to be counted: from 49.90 N northwards lie birch, cedar and alder, 1.1 km apart.
    function three() {
        const world = createTemporaryObject(worlds, roundStory, { today: "2026-07-14" });
        const at = { world };
        at.alder = world.addTrap("Alder flats", "bertha 1", "2026-06-04", 49.93, -97.2);
        at.birch = world.addTrap("Birch corner", "bertha 2", "2026-06-04", 49.91, -97.2);
        at.cedar = world.addTrap("Cedar bend", "bertha 3", "2026-06-04", 49.92, -97.2);
        return at;
    }

    function openRound(at, width, height) {
        open(at, "round", "", width, height);
        tryVerify(() => pageOn(at).model.isKnown);
        waitForRendering(at.main.contentItem, 200);
        return pageOn(at);
    }

    // The round from 49.90 N, in its order.
    function standing(width, height) {
        const at = three();
        at.world.standAt(49.90, -97.2, 5);
        openRound(at, width, height);
        tryCompare(pageOn(at).model, "orderLine", "The shortest way found from here.");
        return at;
    }

    // The fields in the order in which they stand, in short.
    function order(at) {
        const names = [];
        for (let i = 0; i < pageOn(at).model.stops.count; ++i)
            names.push(find(pageOn(at), "stop" + i).title.replace(/^[0-9]+\. /, "").split(" ")[0]);
        return names.join(" ");
    }

    function finishWalk(at, trap, verdict, day) {
        const site = at.world.fieldOf(trap, "site");
        const walk = at.world.keepRecord("walk", { site, season: at.world.fieldOf(site, "season"), pest: "bertha-armyworm",
                protocol_version: "2026-1", day, at_ms: Date.parse(day + "T19:00:00Z"), offset_min: 0, frame_cm2: 2500, finished: true });
        at.world.keepRecord("decision", { walk, day, verdict });
        return walk;
    }

    function part(at, key) {
        tap(pageOn(at), "chip_" + key);
        waitForRendering(at.main.contentItem, 200);
    }

    function change(at) {
        tap(pageOn(at), "change");
        waitForRendering(at.main.contentItem, 200);
    }

    function way(at, index) {
        return find(find(pageOn(at), "stop" + index), "way").text;
    }
}
