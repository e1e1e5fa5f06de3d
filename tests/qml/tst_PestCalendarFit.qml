// SPDX-License-Identifier: MIT
// The calendar of moth and crop in every size, light and size of type.
import QtQuick
import QtTest
import Duskrow.Testing

WalkCase {
    id: test

    name: "PestCalendarFit"

    CalendarStory {
        id: records
    }

    Component {
        id: worldMaker
        World {
            today: "2026-07-23"
        }
    }

    function test_everyLook_data() {
        return looks();
    }

    function below(main, page, name, where, complaints) {
        const scroll = find(page, "pageScroll");
        const y = find(page, name).mapToItem(scroll.contentItem, 0, 0).y - 8;
        scroll.contentY = Math.max(0, Math.min(y, scroll.contentHeight - scroll.height));
        wait(50);
        judge(main, where, complaints);
    }

    function test_everyLook(look) {
        const world = createTemporaryObject(worldMaker, test);
        dress(world, look);
        const trap = world.addTrap("Slough corner by the old grain elevator", "bertha 1", "2026-06-03", 52.1, -106.6);
        records.fill(world, trap, true);
        const complaints = [];
        const main = world.openWindow(look.w, look.h, "pestCalendar", trap);
        waitForRendering(main.contentItem);
        const page = find(main.contentItem, "pages").currentItem;
        tryVerify(() => page.model.isRead, 30000);
        wait(50);
        judge(main, "calendar", complaints);
        below(main, page, "strip", "calendar, the strip", complaints);
        below(main, page, "entries", "calendar, the list", complaints);
        below(main, page, "gaps", "calendar, what cannot be said", complaints);
        page.view = "flight";
        wait(50);
        below(main, page, "flightTitle", "flight", complaints);
        below(main, page, "flightLines", "flight, below", complaints);
        page.model.axis = "warmth";
        wait(50);
        below(main, page, "flightTitle", "flight by warmth", complaints);
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }
}
