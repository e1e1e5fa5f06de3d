// SPDX-License-Identifier: MIT
// The list of traps: found, sorted, and never more of it made than is seen.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

TestCase {
    id: test

    name: "Traps"
    when: windowShown

    Component {
        id: worldMaker
        World {
            today: "2026-07-14"
        }
    }

    function find(root: Item, name: string): Item {
        const found = findChild(root, name);
        verify(found, name);
        return found;
    }

    function open(world: World, w: int, h: int): var {
        const main = world.openWindow(w, h);
        mouseClick(find(main.contentItem, "tab_traps"));
        waitForRendering(main.contentItem);
        const list = find(main.contentItem, "list");
        tryVerify(() => list.model.count > 0 && list.itemAtIndex(0));
        return main;
    }

    function rows(main: var): var {
        const list = find(main.contentItem, "list");
        const found = [];
        for (let i = 0; i < list.count; ++i) {
            const row = list.itemAtIndex(i);
            if (row)
                found.push(row);
        }
        return found;
    }

    // Without the spaces that do not break.
    function said(row: Item): string {
        return row.subtitle.replace(/\u00a0/g, " ");
    }

    function titles(main: var): string {
        return rows(main).map(row => row.title).join(", ");
    }

    function three(world: World): var {
        const elm = world.addTrap("Elm slough", "bertha 1", "2026-06-04", 49.97, -97.2);
        const ash = world.addTrap("Ash hill", "bertha 1", "2026-06-04", 49.91, -97.2);
        const old = world.addTrap("Alder road", "bertha 1", "2026-06-04", 49.9, -97.2);
        const oak = world.addTrap("Oak bluff", "bertha 1", "2026-06-04", 49.93, -97.2);
        world.addCount(elm, "2026-07-06", 120);
        world.addCount(ash, "2026-07-06", 7);
        world.addCount(old, "2026-07-06", 500);
        world.endTrap(old, "2026-07-10");
        return { elm, ash, old, oak };
    }

    function test_eachTrapSaysItsCatchAndWhen() {
        const world = createTemporaryObject(worldMaker, test);
        three(world);
        const main = open(world, 390, 844);
        compare(titles(main), "Ash hill · bertha 1, Elm slough · bertha 1, Oak bluff · bertha 1, Alder road · bertha 1");
        verify(find(main.contentItem, "pageHead").mapToItem(main.contentItem, 0, 0).y >= 0, "the head is seen");
        const all = rows(main);
        compare(said(all[0]), "7 moths so far · counted 6 Jul");
        compare(all[0].rightText, "8 nights");
        compare(said(all[2]), "not counted yet · set up 4 Jun");
        compare(said(all[3]), "500 moths in all · ended 10 Jul");
    }

    function test_sortedByCatchAndDistance() {
        const world = createTemporaryObject(worldMaker, test);
        three(world);
        const main = open(world, 390, 844);
        mouseClick(find(main.contentItem, "chip_catch"));
        compare(titles(main), "Elm slough · bertha 1, Ash hill · bertha 1, Oak bluff · bertha 1, Alder road · bertha 1");
        world.standAt(49.9301, -97.2, 5);
        tryVerify(() => findChild(main.contentItem, "chip_distance")?.width > 0);
        waitForRendering(main.contentItem);
        mouseClick(find(main.contentItem, "chip_distance"));
        compare(titles(main), "Oak bluff · bertha 1, Ash hill · bertha 1, Elm slough · bertha 1, Alder road · bertha 1");
        compare(rows(main)[0].rightText, "11 m");
    }

    function test_foundByWhatIsTyped() {
        const world = createTemporaryObject(worldMaker, test);
        three(world);
        world.addTrap("Birch corner", "bertha 1", "2026-06-04", 49.93, -97.2);
        world.addTrap("Birch corner", "bertha 2", "2026-06-04", 49.93, -97.2);
        const main = open(world, 390, 844);
        const box = findChild(find(main.contentItem, "search"), "box");
        mouseClick(box);
        for (const c of "OAK")
            keyClick(c);
        compare(titles(main), "Oak bluff · bertha 1");
        verify(box.activeFocus, "one goes on typing");
        keyClick("z");
        verify(find(main.contentItem, "noneFound").visible);
    }

    function test_aTrapOpensItsSeason() {
        const world = createTemporaryObject(worldMaker, test);
        const ids = three(world);
        const main = open(world, 390, 844);
        const asked = createTemporaryObject(spyMaker, test, { target: find(main.contentItem, "place").item });
        mouseClick(rows(main)[1]);
        compare(asked.count, 1);
        compare(asked.signalArguments[0][0], "season");
        compare(asked.signalArguments[0][1], ids.elm);
    }

    Component {
        id: spyMaker
        SignalSpy {
            signalName: "opened"
        }
    }

    function test_scrollingMakesNoMoreThanAScreenful_data() {
        return [{ tag: "small", w: 360, h: 640 }, { tag: "phone", w: 390, h: 844 }, { tag: "wide", w: 1280, h: 800 }];
    }

    function test_scrollingMakesNoMoreThanAScreenful(size) {
        const world = createTemporaryObject(worldMaker, test);
        world.addManyTraps(600);
        const main = open(world, size.w, size.h);
        const list = find(main.contentItem, "list");
        compare(list.count, 600);
        const made = new Set();
        const look = () => {
            for (let i = 0; i < list.contentItem.children.length; ++i) {
                const item = list.contentItem.children[i];
                if (item.objectName === "trapRow")
                    made.add(item);
            }
        };
        const rowHeight = rows(main)[0].height + list.spacing;
        look();
        // As a thumb does it: a part of a row at a time.
        for (let step = 0; step < 400; ++step) {
            list.contentY += rowHeight * 0.7;
            waitForPolish(main);
            look();
        }
        // A row may be partly seen at each end, and one comes before another goes.
        verify(made.size <= Math.floor(list.height / rowHeight) + 3, made.size + " rows were made");
        list.positionViewAtEnd();
        compare(rows(main).pop().title, "Site 0600 · bertha 1");
    }

    function waitForPolish(main: var) {
        if (isPolishScheduled(find(main.contentItem, "list")))
            waitForItemPolished(find(main.contentItem, "list"));
    }
}
