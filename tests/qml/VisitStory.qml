// SPDX-License-Identifier: MIT
// What the tests of the visit share: a world with a trap that was counted twice, and hands that tap and type.
import QtQuick
import QtTest
import Duskrow.Testing

TestCase {
    id: story

    property World world
    property string trap
    property var main
    readonly property Item page: story.main.contentItem
    readonly property Item step: story.find("step").item
    readonly property var visit: story.find("pages").currentItem.model

    readonly property Component worldType: Component {
        World {}
    }

    TextEdit {
        id: clipboard
    }

    when: windowShown

    // 12 and 200 moths so far, last emptied a week ago.
    function begin(width = 390, height = 844) {
        story.world = createTemporaryObject(story.worldType, story);
        story.trap = story.world.addTrap("Slough corner", "bertha trap 1", "2026-06-02", 52.1, -106.6);
        story.world.addCount(story.trap, "2026-06-30", 12);
        story.world.addCount(story.trap, "2026-07-07", 200);
        story.open("visit", story.trap, width, height);
    }

    function open(route, subject, width = 390, height = 844) {
        story.main = story.world.openWindow(width, height, route, subject);
        waitForRendering(story.page);
    }

    function find(name: string): Item {
        const found = findChild(story.page, name);
        verify(found, name);
        return found;
    }

    function within(owner: string, name: string): Item {
        const found = findChild(story.find(owner), name);
        verify(found, owner + " " + name);
        return found;
    }

    // In the sheet that is open.
    function inSheet(sheet: string, name: string): Item {
        const popup = findChild(story.main, sheet);
        verify(popup, sheet);
        tryVerify(() => popup.opened, 2000, sheet + " is open");
        const found = findChild(popup.contentItem, name);
        verify(found, sheet + " " + name);
        return found;
    }

    function isOpen(sheet: string): bool {
        return findChild(story.main, sheet).opened;
    }

    // Brings a thing under the finger, as a person scrolls, and taps it.
    function tapItem(item) {
        if (story.step && "reveal" in story.step)
            story.step.reveal(item);
        verify(item.visible, item.objectName + " is seen");
        mouseClick(item);
    }

    function tap(name: string) {
        story.tapItem(story.find(name));
    }

    function tapInSheet(sheet: string, name: string) {
        mouseClick(story.inSheet(sheet, name));
        tryVerify(() => !story.isOpen(sheet), 2000, sheet + " closed");
    }

    function chip(owner: string, key: string) {
        story.tapItem(story.within(owner, "chip_" + key));
    }

    function typeInto(box, text: string) {
        story.tapItem(box);
        box.selectAll();
        keyClick(Qt.Key_Delete);
        for (const c of text)
            keyClick(c);
    }

    function enter(owner: string, text: string) {
        story.typeInto(story.within(owner, "box"), text);
    }

    function paste(owner: string, text: string) {
        const box = story.within(owner, "box");
        story.tapItem(box);
        box.selectAll();
        clipboard.text = text;
        clipboard.selectAll();
        clipboard.copy();
        keySequence(StandardKey.Paste);
    }

    function next(expected: string) {
        mouseClick(story.find("next"));
        compare(story.visit.step, expected);
        waitForRendering(story.page);
    }

    function keep(): string {
        mouseClick(story.find("keep"));
        tryCompare(story.visit, "step", "kept");
        return story.visit.visitId;
    }

    // From the count to kept with one tap a step.
    function goThrough(): string {
        story.next("trap");
        story.next("lure");
        story.next("done");
        return story.keep();
    }

    function kept(id: string, field: string): var {
        return story.world.fieldOf("visit", id, field);
    }

    function count(moths: int) {
        for (let i = 0; i < moths; ++i)
            mouseClick(story.find("pad"));
    }
}
