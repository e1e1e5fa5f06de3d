// SPDX-License-Identifier: MIT
// What the tests of a coordinator's desk share: a week with one of each, and the desk over it.
import QtQuick
import Duskrow.Testing

ExchangeStory {
    id: story

    visible: true
    width: 400
    height: 400

    // Three traps in two districts. For the week of 6 to 12 July, counted on the 6th: one count, one that could not be
    // made, one of which nothing came.
    function season() {
        const at = made();
        const world = at.world;
        const district = world.keepRecord("district", { name: "North bench" });
        world.keepRecord("site", { district }, at.site);
        at.toms = world.addTrapOf("Tom", "Poplar bend", "bertha 2", "2026-06-04");
        at.idas = world.addTrapOf("Ida", "Elm flats", "bertha 3", "2026-06-04");
        world.keepRecord("visit", { trap: at.idas, day: "2026-07-06", outcome: "could_not_count", reason: "fallen" });
        return at;
    }

    function desk(at, width, height) {
        at.main = at.world.openWindow(width ?? 1280, height ?? 800, "desk", "");
        waitForRendering(at.main.contentItem);
        const page = pageOn(at);
        tryVerify(() => page.model.isRead && !page.model.isChecking);
        wait(0);
        return page;
    }

    function focusOf(at) {
        return at.main.activeFocusItem;
    }

    function pick(page, view) {
        tap(find(page, "views"), "chip_" + view);
        compare(page.model.view, view);
        wait(0);
    }
}
