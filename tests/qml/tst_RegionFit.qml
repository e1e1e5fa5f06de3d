// SPDX-License-Identifier: MIT
// Map, tables, winter and temperatures in every size, light and size of type.
import QtQuick
import QtTest
import Duskrow.Testing

WalkCase {
    id: test

    name: "RegionFit"

    RegionRecords {
        id: records
    }

    Component {
        id: worldMaker
        World {
            today: "2026-07-14"
        }
    }

    function test_everyLook_data() {
        return looks();
    }

    function test_everyLook(look) {
        const at = { world: createTemporaryObject(worldMaker, test) };
        dress(at.world, look);
        at.traps = records.fill(at.world);
        at.world.keepRecord("visit", { trap: at.traps[5], day: "2026-07-07", outcome: "counted", pest: 3, state: "fallen", emptied: true });
        at.world.addTrap("Behind the old grain elevator of Saint-Ferdinand", "bertha 99", "2026-06-10", 52.05, -105.6);
        const complaints = [];
        const main = at.world.openWindow(look.w, look.h, "map", "");
        waitForRendering(main.contentItem);
        const map = find(main.contentItem, "pages").currentItem;
        tryVerify(() => map.model.isRead && !map.model.isWorking);
        judge(main, "map", complaints);
        map.model.chooseNext(1);
        find(map, "openOverlay").clicked();
        find(map, "openSave").clicked();
        const scroll = find(map, "pageScroll");
        wait(50);
        judge(main, "map, a trap", complaints);
        scroll.contentY = Math.max(0, scroll.contentHeight - scroll.height);
        wait(50);
        judge(main, "map, below", complaints);
        scroll.contentY = Math.max(0, Math.min(find(map, "keyCard").y - 20, scroll.contentHeight - scroll.height));
        wait(50);
        judge(main, "map, its key", complaints);
        main.back();
        main.open("years", "");
        const years = find(main.contentItem, "pages").currentItem;
        tryVerify(() => years.years.isRead);
        for (const view of ["weeks", "years", "bands"]) {
            years.years.view = view;
            wait(50);
            judge(main, "years " + view, complaints);
        }
        main.back();
        main.open("winter", "");
        const winter = find(main.contentItem, "pages").currentItem;
        tryVerify(() => winter.winter.isRead);
        wait(50);
        judge(main, "winter", complaints);
        winter.list.positionViewAtEnd();
        wait(50);
        judge(main, "winter, its end", complaints);
        main.back();
        main.open("temperatures", "");
        const temperatures = find(main.contentItem, "pages").currentItem;
        temperatures.model.open(at.world.putFile("airport of the district, daily.csv", "date,tmin (C),tmax (C)\n2026-06-01,14,7\n2026-06-02,5,19\n2026-06-09,6,22\n"));
        temperatures.model.choose("station", "Airport");
        tryVerify(() => !temperatures.model.isReading && temperatures.model.refused.count === 1);
        wait(50);
        judge(main, "temperatures", complaints);
        const sheet = find(temperatures, "pageScroll");
        sheet.contentY = Math.max(0, sheet.contentHeight - sheet.height);
        wait(50);
        judge(main, "temperatures, below", complaints);
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }
}
