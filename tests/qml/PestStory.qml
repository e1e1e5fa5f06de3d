// SPDX-License-Identifier: MIT
// What the tests of other pests share: a programme begun for one by touch and keys, its traps set up page by page, and
// all that is written or read aloud on a page.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

VisitStory {
    id: pests

    readonly property Component freshWorld: Component {
        World {
            today: "2026-06-03"
            begun: false
        }
    }

    readonly property Component runningWorld: Component {
        World {
            today: "2026-06-03"
        }
    }

    function findIn(root: Item, name: string): Item {
        const found = findChild(root, name);
        verify(found, name);
        return found;
    }

    // Scrolls to an item, as a person does, and touches it.
    function touch(root: Item, name: string) {
        const item = findIn(root, name);
        verify(item.visible, name + " can be seen");
        verify(item.enabled, name + " can be touched");
        let scroll = item.parent;
        while (scroll && scroll.objectName !== "pageScroll")
            scroll = scroll.parent;
        if (scroll) {
            const y = item.mapToItem(scroll.contentItem, 0, item.height / 2).y;
            scroll.contentY = Math.max(0, Math.min(y - scroll.height / 2, scroll.contentHeight - scroll.height));
        }
        waitForRendering(item, 100);
        mouseClick(item);
    }

    function write(root: Item, field: string, words: string) {
        touch(root, field);
        const box = findIn(findIn(root, field), "box");
        box.forceActiveFocus();
        box.selectAll();
        for (const c of words)
            keyClick(c);
        compare(box.text, words);
    }

    // Everything that is written or read aloud on what is seen now.
    function said(root: Item): var {
        const all = [];
        const gather = item => {
            if (!item.visible)
                return;
            for (const words of [item.text, item.Accessible.name, item.Accessible.description])
                if (typeof words === "string" && words.length > 0)
                    all.push(words);
            for (let i = 0; i < item.children.length; ++i)
                gather(item.children[i]);
        };
        gather(root);
        verify(all.length > 3, "there is something to read");
        return all;
    }

    function checkNothingOf(words, where: string) {
        for (const line of said(pests.page))
            verify(!words.test(line), where + ": " + line);
    }

    // The first start, by touch and keys.
    function beginFor(pest: string, width = 390, height = 844) {
        pests.world = createTemporaryObject(pests.freshWorld, test);
        pests.main = pests.world.openWindow(width, height);
        waitForRendering(pests.page);
        write(pests.page, "myName", "Ida");
        write(pests.page, "programmeName", "Elm");
        touch(pests.page, "chip_" + pest);
        compare(findIn(pests.page, "pest").chosen, pest);
        touch(pests.page, "begin");
        tryCompare(pests.world.app, "state", App.Open);
    }

    // Sets up a trap page by page, and gives the pages it came by. `acts` are what is done on a page; `look` is asked on each.
    function setUp(acts, look = () => {}): var {
        open("setup", "");
        const page = pests.pageOnTop();
        tryVerify(() => findIn(page, "step").item !== null && findIn(page, "next").enabled);
        tryVerify(() => findIn(page, "step").item.model.trap.tag.length > 0);
        const usual = {
            field: () => write(page, "siteName", "Elm corner"),
            yes: () => write(page, "landowner", "Ada"),
            place: () => {
                pests.world.standAt(52.1579, -106.6702, 12);
                tryVerify(() => findIn(page, "accuracy").lines.length > 0);
            },
            stake: () => write(page, "canopy", "25")
        };
        const trail = findIn(page, "trail");
        const seen = [];
        while (trail.page !== "kept") {
            const now = trail.page;
            seen.push(now);
            for (const act of [usual[now], acts[now]])
                if (act)
                    act(page);
            look(now);
            tryVerify(() => findIn(page, "next").enabled);
            mouseClick(findIn(page, "next"));
            tryVerify(() => trail.page !== now, 5000, "beyond " + now);
            waitForRendering(page, 200);
        }
        look("kept");
        return seen;
    }

    // A page, or one of the four that a tab leads to.
    function goTo(route: string, subject = "") {
        const isTab = ["today", "traps", "larvae", "year"].includes(route);
        open(isTab ? "" : route, isTab ? "" : subject);
        if (isTab)
            mouseClick(findIn(pests.page, "tab_" + route));
        wait(50);
    }

    function newestTrap(): string {
        const ids = pests.world.trapIds();
        return ids[ids.length - 1];
    }

    function rules(name = "rules"): string {
        return findIn(pests.pageOnTop(), name).lines.join("\n").replace(/\u00a0/g, " ");
    }
}
