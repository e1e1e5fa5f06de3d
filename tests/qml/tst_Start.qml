// SPDX-License-Identifier: MIT
// The first start, as a newcomer does it: two names and a tap.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

TestCase {
    id: test

    name: "Start"
    when: windowShown

    Component {
        id: freshWorld
        World {
            begun: false
        }
    }

    function find(root: Item, name: string): Item {
        const found = findChild(root, name);
        verify(found, name);
        return found;
    }

    function test_twoNamesBeginASeason() {
        const world = createTemporaryObject(freshWorld, test);
        compare(world.app.state, App.Starting);
        const main = world.openWindow(390, 844);
        waitForRendering(main.contentItem);
        mouseClick(find(main.contentItem, "begin"));
        compare(world.changes(), 0, "nothing is kept without a name");
        mouseClick(findChild(find(main.contentItem, "myName"), "box"));
        for (const c of "Ida")
            keyClick(c);
        mouseClick(findChild(find(main.contentItem, "programmeName"), "box"));
        for (const c of "Elm")
            keyClick(c);
        mouseClick(find(main.contentItem, "begin"));
        tryCompare(world.app, "state", App.Open);
        compare(world.changes(), 4, "programme, season, protocol and member");
        world.restart();
        compare(world.app.state, App.Open, "and they are there after a restart");
    }
}
