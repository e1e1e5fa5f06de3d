// SPDX-License-Identifier: MIT
// What the tests of a trap's life share: a trap that stands, its acts, and what is kept of them.
import QtQuick

SeasonStory {
    id: lifeStory

    readonly property Walk walk: Walk {}

    function standing(setDay) {
        const at = made("2026-07-14", setDay);
        at.world.addCount(at.trap, "2026-07-07", 77);
        return at;
    }

    function title(at) {
        return find(pageOn(at), "pageHead").title;
    }

    function begin(at, act) {
        open(at, "life");
        tap(pageOn(at), act);
        waitForRendering(pageOn(at), 500);
    }

    // Keeps the act; true once its page has made room for the overview.
    function keep(at) {
        tap(pageOn(at), "keep");
        tryVerify(() => findChild(pageOn(at), "acts"), 5000, "kept, and back at the overview");
        waitForRendering(pageOn(at), 500);
        return pageOn(at);
    }

    function only(at, kind) {
        const ids = at.world.recordsOf(kind);
        compare(ids.length, 1, "one " + kind);
        return ids[0];
    }

    function fields(at, id, names) {
        return names.map(name => String(at.world.fieldOf(id, name))).join(" ");
    }

    // A device without a receiver asks for typing by itself.
    function typeThePlace(at) {
        if (find(pageOn(at), "latitude").visible)
            return;
        tap(pageOn(at), "typeOrMeasure");
        waitForRendering(pageOn(at), 500);
    }

    function done(page) {
        const found = [];
        for (let i = 0; findChild(page, "done" + i); ++i) {
            const row = findChild(page, "done" + i);
            found.push([row.title, row.subtitle, row.rightText].filter(part => part.length > 0).join(", "));
        }
        return found;
    }
}
