// SPDX-License-Identifier: MIT
// Goes to every place and page there is a row for, and asks of each: can it be read, reached, and read aloud?
import QtQuick
import Duskrow.Testing

WalkCase {
    id: test

    name: "Walk"

    Component {
        id: worldMaker
        World {
            today: "2026-07-14"
        }
    }

    Component {
        id: freshWorld
        World {
            begun: false
        }
    }

    function test_everyScreen_data() {
        return looks();
    }

    function test_everyScreen(look) {
        const world = createTemporaryObject(worldMaker, test);
        dress(world, look);
        const ids = fill(world);
        const main = world.openWindow(look.w, look.h);
        waitForRendering(main.contentItem);
        const complaints = [];
        verify(main.placeKeys.length >= 3);
        for (const key of main.placeKeys) {
            find(find(main.contentItem, "tabs"), "tab_" + key).clicked();
            compare(main.place, key);
            wait(50);
            judge(main, key, complaints);
        }
        verify(main.pageKeys.length >= 9);
        for (const route of main.pageKeys) {
            main.open(route, subjectOf(route, ids));
            compare(find(main.contentItem, "pages").depth, 1, route);
            wait(50);
            judge(main, route, complaints);
            main.back();
        }
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }

    function test_beforeThereIsAnything_data() {
        return looks();
    }

    function test_beforeThereIsAnything(look) {
        const fresh = createTemporaryObject(freshWorld, test);
        dress(fresh, look);
        const complaints = [];
        const first = fresh.openWindow(look.w, look.h);
        waitForRendering(first.contentItem);
        judge(first, "start", complaints);
        const world = createTemporaryObject(worldMaker, test);
        dress(world, look);
        const main = world.openWindow(look.w, look.h);
        waitForRendering(main.contentItem);
        for (const key of main.placeKeys) {
            find(find(main.contentItem, "tabs"), "tab_" + key).clicked();
            wait(50);
            judge(main, "empty " + key, complaints);
        }
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }
}
