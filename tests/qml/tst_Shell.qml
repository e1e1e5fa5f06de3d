// SPDX-License-Identifier: MIT
// The window itself: places and pages, side by side where there is room, and the way back out.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

TestCase {
    id: test

    name: "Shell"
    when: windowShown

    Component {
        id: worldMaker
        World {
            today: "2026-07-14"
        }
    }

    function find(root: Item, name: string): Item {
        const found = findChild(root, name);
        verify(found, name);
        return found;
    }

    function test_backLeavesAPageThenAPlaceThenTheApp() {
        const world = createTemporaryObject(worldMaker, test);
        const main = world.openWindow(390, 844);
        find(main.contentItem, "tab_year").clicked();
        main.open("settings", "");
        main.open("programme", "");
        const pages = find(main.contentItem, "pages");
        compare(pages.depth, 2);
        verify(main.stepBack());
        compare(pages.depth, 1);
        verify(main.stepBack());
        compare(pages.depth, 0);
        compare(main.place, "year");
        verify(main.stepBack());
        compare(main.place, "today");
        verify(!main.stepBack(), "only now the app is left");
    }

    function test_escapeLeavesAPage() {
        const world = createTemporaryObject(worldMaker, test);
        const main = world.openWindow(390, 844, "settings", "");
        waitForRendering(main.contentItem);
        keyClick(Qt.Key_Escape);
        tryCompare(find(main.contentItem, "pages"), "depth", 0);
    }

    function test_placeAndPageStandSideBySideWhereThereIsRoom_data() {
        return [{ tag: "phone", w: 390, h: 844, beside: false }, { tag: "desk", w: 1280, h: 800, beside: true }];
    }

    function test_placeAndPageStandSideBySideWhereThereIsRoom(size) {
        const world = createTemporaryObject(worldMaker, test);
        const main = world.openWindow(size.w, size.h, "settings", "");
        waitForRendering(main.contentItem);
        const place = find(main.contentItem, "place");
        const page = find(main.contentItem, "pages");
        compare(place.visible, size.beside);
        verify(page.visible);
        const left = page.mapToItem(main.contentItem, 0, 0).x;
        if (size.beside)
            verify(left >= place.width && page.width >= 800, "at " + left + ", " + page.width + " wide");
        else
            compare(page.width, size.w);
    }

    function test_aPlaceTakesThePagesAway() {
        const world = createTemporaryObject(worldMaker, test);
        const main = world.openWindow(1280, 800, "settings", "");
        waitForRendering(main.contentItem);
        mouseClick(find(main.contentItem, "tab_traps"));
        compare(main.place, "traps");
        compare(find(main.contentItem, "pages").depth, 0);
    }
}
