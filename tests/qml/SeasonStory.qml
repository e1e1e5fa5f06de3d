// SPDX-License-Identifier: MIT
// What the tests of season, life and history share: a world with one trap, its pages, and a person's hands.
import QtQuick
import QtTest
import Duskrow.Testing

TestCase {
    id: story

    when: windowShown

    readonly property Component worlds: Component {
        World {}
    }

    // A world that stands on a day, with a trap set up on 3 June.
    function made(today, setDay) {
        const world = createTemporaryObject(story.worlds, story, { today });
        const trap = world.addTrap("Slough corner", "bertha 1", setDay ?? "2026-06-03", 52.1, -106.6);
        return { world, trap };
    }

    // A visit that emptied the trap, with whatever else is said of it.
    function addVisit(at, day, fields) {
        const ms = Date.parse(day + "T19:00:00Z");
        return at.world.keepRecord("visit", Object.assign({ trap: at.trap, day, at_ms: ms, offset_min: 0, outcome: "counted",
                emptied: true, state: "fine" }, fields));
    }

    function open(at, route, subject, width, height) {
        at.main = at.world.openWindow(width ?? 390, height ?? 844, route, subject ?? at.trap);
        waitForRendering(at.main.contentItem);
        return pageOn(at);
    }

    // The page on top.
    function pageOn(at) {
        const page = findChild(at.main.contentItem, "pages").currentItem;
        verify(page, "a page is open");
        return page;
    }

    function find(root, name) {
        const found = findChild(root, name);
        verify(found, name);
        return found;
    }

    // Scrolls to an item, as a person does, and touches it.
    function tap(page, name) {
        const item = find(page, name);
        verify(item.visible, name + " can be seen");
        verify(item.enabled, name + " can be touched");
        let scroll = item.parent;
        while (scroll && !(scroll.objectName === "pageScroll"))
            scroll = scroll.parent;
        if (scroll) {
            const y = item.mapToItem(scroll.contentItem, 0, item.height / 2).y;
            scroll.contentY = Math.max(0, Math.min(y - scroll.height / 2, scroll.contentHeight - scroll.height));
        }
        waitForRendering(item, 100);
        mouseClick(item);
    }

    function type(page, name, words) {
        const box = find(find(page, name), "box");
        box.forceActiveFocus();
        box.selectAll();
        for (const c of words)
            keyClick(c);
        compare(box.text, words);
    }

    function rows(list) {
        const found = [];
        for (let i = 0; findChild(list, "row" + i); ++i) {
            const row = findChild(list, "row" + i);
            found.push([row.title, row.rightText, row.subtitle.replace(/\u00a0/g, " ")]);
        }
        return found;
    }

    // The season as a chart or one of its lists.
    function shown(page, key) {
        tap(page, "chip_" + key);
        waitForRendering(page, 500);
        return find(page, key);
    }
}
