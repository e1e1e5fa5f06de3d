// SPDX-License-Identifier: MIT
// The day's list: what is due comes nearest first, says why, and one tap leads there.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

TestCase {
    id: test

    name: "Today"
    when: windowShown

    Component {
        id: worldMaker
        World {
            today: "2026-07-14"
        }
    }

    Component {
        id: nextYear
        World {
            today: "2027-05-20"
            seasonYear: 2026
        }
    }

    function find(root: Item, name: string): Item {
        const found = findChild(root, name);
        verify(found, name);
        return found;
    }

    function allNamed(item: Item, name: string, into: var): var {
        if (!item.visible)
            return into;
        if (item.objectName === name)
            into.push(item);
        for (let i = 0; i < item.children.length; ++i)
            allNamed(item.children[i], name, into);
        return into;
    }

    function open(world: World, w: int, h: int): var {
        const main = world.openWindow(w, h);
        waitForRendering(main.contentItem);
        tryVerify(() => find(main.contentItem, "place").item.model.isKnown);
        return main;
    }

    function test_withoutATrapItOffersToSetOneUp() {
        const world = createTemporaryObject(worldMaker, test);
        const main = open(world, 390, 844);
        const empty = find(main.contentItem, "noTraps");
        verify(empty.visible);
        verify(!find(main.contentItem, "actCard").visible);
        verify(!find(main.contentItem, "report").visible, "nothing is to be reported yet");
    }

    function test_whatIsDueComesByDistance() {
        const world = createTemporaryObject(worldMaker, test);
        const far = world.addTrap("Poplar bend", "bertha 1", "2026-06-04", 49.9300, -97.2000);
        const near = world.addTrap("Slough corner", "bertha 1", "2026-06-04", 49.9001, -97.2000);
        world.addCount(far, "2026-07-05", 30);
        world.addCount(near, "2026-07-06", 40);
        const main = open(world, 390, 844);
        compare(find(main.contentItem, "pageHead").title, "Two stops today");
        compare(find(main.contentItem, "actTitle").text, "Poplar bend · bertha 1", "by day while no place is known");
        world.standAt(49.9000, -97.2000, 5);
        tryCompare(find(main.contentItem, "actTitle"), "text", "Slough corner · bertha 1");
        compare(find(main.contentItem, "actText").text, "You are 11 m away. 8 nights since it was emptied.");
        const stops = allNamed(main.contentItem, "dueStop", []);
        compare(stops.length, 1);
        compare(stops[0].title, "Poplar bend · bertha 1");
        compare(stops[0].rightText, "3.3 km ↑");
        verify(stops[0].Accessible.name.includes("3.3 km to the north"), stops[0].Accessible.name);
        compare(find(main.contentItem, "reportLine").text, "2 counts still to come");
    }

    function test_aStopSaysWhy() {
        const world = createTemporaryObject(worldMaker, test);
        const one = world.addTrap("Slough corner", "bertha 1", "2026-06-04", 49.9, -97.2);
        const two = world.addTrap("Poplar bend", "bertha 1", "2026-06-04", 49.95, -97.2);
        world.addCount(one, "2026-06-29", 40);
        world.addCount(two, "2026-07-06", 40);
        const main = open(world, 390, 844);
        const act = find(main.contentItem, "actCard");
        verify(find(act, "actText").text.startsWith("15 nights since it was emptied. A count day went by"));
        const stop = allNamed(main.contentItem, "dueStop", [])[0];
        verify(!find(stop, "reasons").visible);
        mouseClick(stop, 20, 20);
        tryVerify(() => find(stop, "reasons").visible);
        compare(find(stop, "reasons").text, "8 nights since it was emptied.");
        compare(find(stop, "stopAct").text, "Count now");
    }

    function test_aKeptCountLeavesTheList() {
        const world = createTemporaryObject(worldMaker, test);
        const trap = world.addTrap("Slough corner", "bertha 1", "2026-06-04", 49.9, -97.2);
        const main = open(world, 390, 844);
        verify(find(main.contentItem, "actCard").visible);
        world.addCount(trap, "2026-07-14", 12);
        tryVerify(() => !find(main.contentItem, "actCard").visible);
        compare(find(main.contentItem, "pageHead").title, "Nothing due today");
        const later = allNamed(main.contentItem, "laterStop", []);
        compare(later.length, 1);
        compare(later[0].line, "count on 20 Jul");
        compare(later[0].rightText, "Mon");
        compare(find(main.contentItem, "reportLine").text, "every count is in");
        compare(find(main.contentItem, "keptLine").text, "All on this device: one visit this season.");
    }

    function test_howFarTheOwnEntriesGot() {
        const world = createTemporaryObject(worldMaker, test);
        const trap = world.addTrap("Slough corner", "bertha 1", "2026-06-04", 49.9, -97.2);
        const main = open(world, 390, 844);
        verify(!find(main.contentItem, "travel").visible, "one who is alone needs no word of it");
        world.joinAnother("Ida", "agronomist", "phone");
        const line = find(main.contentItem, "travel");
        tryCompare(line, "title", "All you entered is handed over");
        verify(line.visible && !find(main.contentItem, "keptLine").visible);
        world.addCount(trap, "2026-07-14", 12);
        tryCompare(line, "title", "Only on this phone: one entry of yours");
        tryCompare(line, "subtitle", "one visit this season");
        world.exchange();
        tryCompare(line, "title", "All you entered is handed over");
    }

    function test_halfEnteredWorkComesFirst() {
        const world = createTemporaryObject(worldMaker, test);
        const trap = world.addTrap("Slough corner", "bertha 1", "2026-06-04", 49.9, -97.2);
        const main = open(world, 390, 844);
        compare(allNamed(main.contentItem, "draft", []).length, 0);
        world.leaveDraft("visit/" + trap, "{}");
        tryVerify(() => allNamed(main.contentItem, "draft", []).length === 1);
        const draft = allNamed(main.contentItem, "draft", [])[0];
        compare(draft.title, "Go on with a half-entered visit");
        compare(draft.subtitle, "Slough corner · bertha 1");
        const topOf = item => item.mapToItem(main.contentItem, 0, 0).y;
        tryVerify(() => topOf(draft) < topOf(find(main.contentItem, "actCard")), 5000, "it is laid out above the card");
    }

    function test_anotherKeepersTrapIsNotMine() {
        const world = createTemporaryObject(worldMaker, test);
        world.addTrapOf("Finn", "Poplar bend", "bertha 1", "2026-06-04");
        const main = open(world, 390, 844);
        verify(find(main.contentItem, "noTraps").visible);
    }

    function test_aNewYearBeginsLikeTheLast() {
        const world = createTemporaryObject(nextYear, test);
        const main = open(world, 390, 844);
        const empty = find(main.contentItem, "noSeason");
        verify(empty.visible);
        compare(world.app.state, App.Open);
        mouseClick(find(main.contentItem, "beginSeason"));
        tryVerify(() => find(main.contentItem, "noTraps").visible);
        verify(!empty.visible);
        compare(world.changes(), 7, "a season and its protocol; people and districts stay");
    }
}
