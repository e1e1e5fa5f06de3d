// SPDX-License-Identifier: MIT
// The walk in another language, whose words are longer.
import QtQuick
import Duskrow.Testing

WalkCase {
    id: test

    name: "WalkFrench"

    Component {
        id: frenchWorld
        World {
            today: "2026-07-14"
            language: "fr_CA"
        }
    }

    function test_everyPlaceInFrench_data() {
        return looks().filter(look => look.light === "day");
    }

    function test_everyPlaceInFrench(look) {
        const world = createTemporaryObject(frenchWorld, test);
        dress(world, look);
        fill(world);
        const main = world.openWindow(look.w, look.h);
        waitForRendering(main.contentItem);
        tryCompare(find(main.contentItem, "pageHead"), "title", "Trois arrêts aujourd’hui");
        compare(find(main.contentItem, "pageHead").above, "mardi 14 juillet");
        const complaints = [];
        for (const key of main.placeKeys) {
            find(find(main.contentItem, "tabs"), "tab_" + key).clicked();
            wait(50);
            judge(main, key, complaints);
        }
        for (const route of ["programme", "calendar", "protocol", "settings"]) {
            main.open(route, subjectOf(route, {}));
            wait(50);
            judge(main, route, complaints);
            main.back();
        }
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }
}
