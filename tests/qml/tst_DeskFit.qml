// SPDX-License-Identifier: MIT
// The desk in every size, light and size of type: its views, a chosen trap, what is asked before a count is left out.
import QtQuick
import QtTest
import Duskrow.Testing

WalkCase {
    id: test

    name: "DeskFit"

    Component {
        id: worldMaker
        World {
            today: "2026-07-14"
        }
    }

    function test_everyLookOfTheDesk_data() {
        return looks();
    }

    function test_everyLookOfTheDesk(look) {
        const world = createTemporaryObject(worldMaker, test);
        dress(world, look);
        const ids = fill(world);
        world.addTrapOf("Marguerite Delacroix-Vandermeulen", "Behind the old grain elevator", "bertha 5", "2026-06-04");
        world.addCount(ids.other, "2026-07-06", 40);
        const main = world.openWindow(look.w, look.h, "desk", "");
        waitForRendering(main.contentItem);
        const page = find(main.contentItem, "pages").currentItem;
        const complaints = [];
        tryVerify(() => page.model.isRead && !page.model.isChecking);
        page.model.goWeeks(-1);
        for (const view of ["traps", "late", "flags", "new"]) {
            page.model.view = view;
            wait(50);
            judge(main, "desk " + view, complaints);
        }
        page.model.view = "late";
        wait(50);
        page.enter(0);
        wait(50);
        judge(main, "who is late", complaints);
        page.toList();
        page.model.view = "flags";
        wait(50);
        page.enter(0);
        wait(50);
        judge(main, "a flag", complaints);
        page.act("l");
        wait(100);
        judge(main, "left out", complaints);
        find(main.contentItem.parent, "leaveOutNo").clicked();
        wait(100);
        page.act("k");
        wait(100);
        judge(main, "asked", complaints);
        find(main.contentItem.parent, "questionYes").clicked();
        tryVerify(() => page.model.questions.count === 1);
        wait(50);
        judge(main, "a question and its flag", complaints);
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }
}
