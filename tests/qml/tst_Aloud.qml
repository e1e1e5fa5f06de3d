// SPDX-License-Identifier: MIT
// Goes to every place and page, and listens: is anything said twice, once by itself and once by what holds it?
import QtQuick
import Duskrow.Testing

WalkCase {
    id: test

    name: "Aloud"

    Component {
        id: worldMaker
        World {
            today: "2026-07-14"
        }
    }

    function initTestCase() {
        Speech.listen();
    }

    // What follows is already within what was just said.
    function echoes(item, where, found) {
        const said = Speech.of(item);
        verify(said.length > 2, where + " says something");
        for (let i = 1; i < said.length; ++i) {
            const before = said[i - 1];
            const isItsKey = before.startsWith(said[i] + ":"); // "Seeded on: one day earlier" stands before its field
            if (said[i].length > 3 && before.includes(said[i]) && !isItsKey)
                found.push(where + ": “" + said[i] + "” after “" + before + "”");
        }
    }

    function test_nothingIsSaidTwice() {
        const world = createTemporaryObject(worldMaker, test);
        const ids = fill(world);
        const main = world.openWindow(390, 844);
        waitForRendering(main.contentItem);
        const found = [];
        for (const key of main.placeKeys) {
            find(find(main.contentItem, "tabs"), "tab_" + key).clicked();
            wait(50);
            echoes(main.contentItem, key, found);
        }
        for (const route of main.pageKeys) {
            main.open(route, subjectOf(route, ids));
            wait(50);
            echoes(find(main.contentItem, "pages").currentItem, route, found);
            main.back();
        }
        verify(found.length === 0, "\n  " + found.join("\n  ") + "\n");
    }
}
