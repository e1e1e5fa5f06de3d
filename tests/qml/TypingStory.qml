// SPDX-License-Identifier: MIT
// A desk where the counts of three traps are typed in.
import QtQuick

ExchangeStory {
    id: test

    function season() {
        const at = made();
        at.toms = at.world.addTrapOf("Tom", "Poplar bend", "bertha 2", "2026-06-04");
        at.idas = at.world.addTrapOf("Ida", "Elm flats", "bertha 3", "2026-06-04");
        return at;
    }

    function typing(at, subject) {
        at.main = at.world.openWindow(1280, 800, "typing", subject ?? "");
        waitForRendering(at.main.contentItem);
        const page = pageOn(at);
        tryVerify(() => page.typing.isRead);
        tryVerify(() => findChild(page, "row0") || page.typing.rows.count === 0);
        wait(0);
        return page;
    }

    function box(page, row, name) {
        return find(find(page, "row" + row), name ?? "count");
    }

    function words(text) {
        for (const c of text)
            keyClick(c);
    }

    function visitsOf(at) {
        return at.world.recordsOf("visit").filter(visit => visit !== at.visit);
    }
}
