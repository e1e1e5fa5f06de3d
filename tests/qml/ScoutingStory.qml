// SPDX-License-Identifier: MIT
// What the tests of scouting share: a field, a walk in it, frames, and money typed.
import QtQuick

LifeStory {
    function begun() {
        const at = standing();
        at.site = at.world.fieldOf(at.trap, "site");
        return at;
    }

    // Begins a walk in the only field; at the tallies of its first frame.
    function walking() {
        const at = begun();
        open(at, "walk", at.trap);
        tap(pageOn(at), "stage_75");
        const page = pageOn(at);
        tap(page, "begin");
        tryVerify(() => pageOn(at) !== page && findChild(pageOn(at), "read"), 5000, "how to look, before the first frame");
        settle(at);
        tap(pageOn(at), "read");
        settle(at);
        at.walk = only(at, "walk");
        return at;
    }

    function settle(at) {
        waitForRendering(at.main.contentItem, 200);
    }

    function count(at, size, larvae) {
        for (let i = 0; i < larvae; ++i)
            tap(find(pageOn(at), "size" + size), "plus");
    }

    function keepFrame(at) {
        const before = pageOn(at).model.framesKept;
        tap(pageOn(at), "keep");
        tryVerify(() => pageOn(at).model.framesKept === before + 1, 5000, "the frame is kept");
        settle(at);
    }

    // Frames kept at once, where the way they were counted does not matter.
    function addFrames(at, larvae) {
        larvae.forEach((count, i) => at.world.keepRecord("frame", { walk: at.walk, day: "2026-07-14", at_ms: 1784000000000 + i, stop: i + 1,
                larvae: count, by_size: "small:0 medium:" + count + " large:0" }));
    }

    function decide(at, cost, price) {
        open(at, "decide", at.walk);
        tap(pageOn(at), "chip_money");
        type(pageOn(at), "cost", cost);
        type(pageOn(at), "price", price);
        settle(at);
    }

    function read(at, name) {
        return find(pageOn(at), name).text;
    }
}
