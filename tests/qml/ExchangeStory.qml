// SPDX-License-Identifier: MIT
// What the tests of exchanging, joining and members share: a world that others can join, and a person's hands.
import QtQuick
import QtTest
import Duskrow.Testing

TestCase {
    id: story

    when: windowShown

    readonly property string noSite: "00000000-0000-0000-0000-000000000000"
    readonly property Component worlds: Component {
        World {}
    }

    // A world with a trap and one count.
    function made(properties) {
        const world = createTemporaryObject(story.worlds, story, Object.assign({ today: "2026-07-14" }, properties ?? {}));
        const at = { world };
        if (world.begun) {
            at.trap = world.addTrap("Slough corner", "bertha 1", "2026-06-03", 52.1, -106.6);
            at.site = world.fieldOf(at.trap, "site");
            at.visit = world.addCount(at.trap, "2026-07-06", 47);
        }
        return at;
    }

    function show(at, route, subject) {
        at.main = at.world.openWindow(390, 844, route ?? "", subject ?? "");
        waitForRendering(at.main.contentItem);
        return route ? pageOn(at) : at.main.contentItem;
    }

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
        const item = typeof name === "string" ? find(page, name) : name;
        verify(item.visible, item.objectName + " can be seen");
        verify(item.enabled, item.objectName + " can be touched");
        let scroll = item.parent;
        while (scroll && !(scroll.objectName === "pageScroll"))
            scroll = scroll.parent;
        if (scroll) {
            const y = item.mapToItem(scroll.contentItem, 0, item.height / 2).y;
            scroll.contentY = Math.max(0, Math.min(y - scroll.height / 2, scroll.contentHeight - scroll.height));
        }
        waitForRendering(item, 100);
        // A list may have made its lines anew in the meantime.
        mouseClick(typeof name === "string" ? find(page, name) : item);
    }

    function type(page, name, words) {
        const box = find(find(page, name), "box");
        box.forceActiveFocus();
        box.selectAll();
        for (const c of words)
            keyClick(c);
        compare(box.text, words);
    }

    // What is long is pasted.
    function paste(page, name, words) {
        const box = find(find(page, name), "box");
        box.forceActiveFocus();
        box.selectAll();
        box.remove(0, box.length);
        box.insert(0, words);
        box.textEdited();
    }

    function chooseFolder(page, folder) {
        tap(page, "addFolder");
        paste(page, "folder", folder);
        tap(page, "takeFolder");
    }
}
