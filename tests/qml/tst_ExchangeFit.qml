// SPDX-License-Identifier: MIT
// The screens that have to do with the others, filled, in every size, light and type size.
import QtQuick
import Duskrow.Testing

WalkCase {
    id: test

    name: "ExchangeFit"

    readonly property string noSite: "00000000-0000-0000-0000-000000000000"

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

    // Two others, a difference, something kept aside, an open invitation.
    function together(look): var {
        const world = createTemporaryObject(worldMaker, test);
        dress(world, look);
        const trap = world.addTrap("Slough corner by the old grain elevator", "bertha 1", "2026-06-04", 49.9, -97.2);
        const visit = world.addCount(trap, "2026-07-06", 47);
        const ida = world.joinAnother("Ida Featherstonehaugh-Wren", "coordinator", "phone");
        const tom = world.joinAnother("Tom", "grower", "old laptop in the shed");
        ida.change("visit", visit, noSite, { pest: 49 });
        world.keepRecord("visit", { pest: 52 }, visit);
        tom.addCount(trap, world.fieldOf(trap, "site"), "2026-07-13", 12);
        ida.exchange(world.sharedFolder());
        tom.exchange(world.sharedFolder());
        world.exchange();
        return { world, trap, visit, ida };
    }

    function seen(main, where, complaints) {
        waitForRendering(main.contentItem, 200);
        wait(100);
        judge(main, where, complaints);
    }

    function test_filled_data() {
        return looks();
    }

    function test_filled(look) {
        const at = together(look);
        const main = at.world.openWindow(look.w, look.h);
        const complaints = [];
        tryCompare(at.world.app, "questions", 2);
        find(find(main.contentItem, "tabs"), "tab_year").clicked();
        seen(main, "year", complaints);

        main.open("exchange", "");
        const exchange = find(main.contentItem, "pages").currentItem;
        find(exchange, "addFolder").clicked();
        seen(main, "adding a folder", complaints);
        verify(exchange.model.addFolder(at.world.sharedFolder()));
        tryVerify(() => exchange.model.ways.count === 1 && !exchange.model.exchanger.running, 10000);
        seen(main, "exchange", complaints);
        main.back();

        main.open("members", "");
        tryCompare(find(main.contentItem, "pages").currentItem.model.members, "count", 3);
        seen(main, "members", complaints);
        main.open("member", at.world.memberId("Ida Featherstonehaugh-Wren"));
        tryCompare(find(main.contentItem, "pages").currentItem.model.devices, "count", 1);
        seen(main, "member", complaints);
        main.open("invite", at.world.memberId("Tom"));
        const invite = find(main.contentItem, "pages").currentItem;
        invite.model.invite();
        tryVerify(() => invite.isDone, 20000);
        seen(main, "invited", complaints);
        main.goTo("today");

        main.open("differences", "");
        tryVerify(() => find(main.contentItem, "pages").currentItem.model.isRead);
        seen(main, "differences", complaints);
        main.goTo("today");
        main.open("history", "visit/" + at.visit);
        seen(main, "history", complaints);
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }

    function test_joining_data() {
        return looks();
    }

    function test_joining(look) {
        const world = createTemporaryObject(freshWorld, test);
        dress(world, look);
        const complaints = [];
        const main = world.openWindow(look.w, look.h);
        seen(main, "start", complaints);
        find(find(main.contentItem, "how"), "chip_others").clicked();
        seen(main, "for others", complaints);
        find(find(main.contentItem, "how"), "chip_join").clicked();
        tryVerify(() => findChild(main.contentItem, "code"));
        find(main.contentItem, "join").clicked();
        seen(main, "join at a hub", complaints);
        find(find(main.contentItem, "from"), "chip_folder").clicked();
        seen(main, "join by a folder", complaints);
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }
}
