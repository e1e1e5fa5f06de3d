// SPDX-License-Identifier: MIT
// What the tests of the visit share: a world with a trap that was counted twice, and hands that tap and type.
import QtQuick
import QtTest
import Duskrow.Testing

TestCase {
    id: story

    property World world
    property string trap
    property var main: null
    readonly property Item page: story.main ? story.main.contentItem : null

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

    // The page of the step that is shown, and the view model of the visit.
    function step(): Item {
        const loader = findChild(story.page, "step");
        return loader ? loader.item : story.pageOnTop();
    }

    function visit(): var {
        return story.pageOnTop().model;
    }

    function pageOnTop(): Item {
        return findChild(story.page, "pages").currentItem;
    }

    function find(name: string): Item {
        // The place beside or under the page may have a thing of the same name.
        const found = findChild(story.step(), name) || findChild(story.page, name);
        verify(found, name);
        return found;
    }

    // What has just appeared takes its place with the next picture.
    function settle() {
        waitForRendering(story.page, 60);
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
        story.settle();
        const found = findChild(popup.contentItem, name);
        verify(found, sheet + " " + name);
        return found;
    }

    function isOpen(sheet: string): bool {
        return findChild(story.main, sheet).opened;
    }

    // Brings a thing under the finger, as a person scrolls, and taps it.
    function tapItem(item) {
        story.settle();
        if ("reveal" in story.step())
            story.step().reveal(item);
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
        compare(story.visit().step, expected);
        waitForRendering(story.page);
    }

    function keep(): string {
        mouseClick(story.find("keep"));
        tryCompare(story.visit(), "step", "kept");
        return story.visit().visitId;
    }

    // From the count to kept with one tap a step.
    function goThrough(): string {
        story.next("trap");
        story.next("lure");
        story.next("done");
        return story.keep();
    }

    function kept(id: string, field: string): var {
        return story.world.fieldOf(id, field);
    }

    function count(moths: int) {
        for (let i = 0; i < moths; ++i)
            mouseClick(story.find("pad"));
    }
}
