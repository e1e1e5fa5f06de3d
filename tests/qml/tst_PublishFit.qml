// SPDX-License-Identifier: MIT
// The bulletin's screens in every size, light and size of type: at the desk and as it comes back.
import QtQuick
import QtTest
import Duskrow.Testing

WalkCase {
    id: test

    name: "PublishFit"

    readonly property Component worlds: Component {
        World {
            today: "2026-07-14"
        }
    }

    function region(): var {
        const world = createTemporaryObject(test.worlds, test);
        const district = world.keepRecord("district", { name: "West bench beyond the long slough" });
        world.keepRecord("district", { name: "East" });
        ["Ann", "Bea", "Cy", "Dot", "Eli"].forEach((who, i) => {
            const trap = world.addTrapOf(who, "Field of " + who, "bertha " + (i + 10), "2026-06-04");
            world.keepRecord("site", { district }, world.fieldOf(trap, "site"));
            for (const [day, moths] of [["2026-06-22", 30], ["2026-06-29", 110], ["2026-07-06", 240]])
                world.addCount(trap, day, moths + 10 * i);
        });
        return world;
    }

    function test_sizes_data() {
        return looks();
    }

    function test_sizes(look) {
        const world = region();
        dress(world, look);
        const main = world.openWindow(look.w, look.h, "publish", "");
        waitForRendering(main.contentItem);
        const page = () => find(main.contentItem, "pages").currentItem;
        tryVerify(() => page().model.isRead);
        page().model.folder = world.folder() + "/out";
        const complaints = [];
        judge(main, "publish", complaints);
        const scroll = find(page(), "pageScroll");
        for (const part of ["previewTitle", "previewMap", "previewChart"]) {
            scroll.contentY = Math.min(find(page(), part).mapToItem(scroll.contentItem, 0, 0).y, scroll.contentHeight - scroll.height);
            judge(main, "publish " + part, complaints);
        }
        page().model.publish();
        tryCompare(page().model, "standing", "again");
        const news = world.openWindow(look.w, look.h, "news", "");
        waitForRendering(news.contentItem);
        judge(news, "news", complaints);
        compare(complaints, []);
    }
}
