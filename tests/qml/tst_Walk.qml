// SPDX-License-Identifier: MIT
// Goes to every place and page there is a row for, and asks of each: can it be read, reached, and read aloud?
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing
import Duskrow.Theme

TestCase {
    id: test

    name: "Walk"
    when: windowShown
    visible: true
    width: 400
    height: 400

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

    Walk {
        id: walk
    }

    Contrast {
        id: contrast
    }

    function find(root: Item, name: string): Item {
        const found = findChild(root, name);
        verify(found, name);
        return found;
    }

    function cleanup() {
        Theme.textScale = 1;
        Theme.dark = false;
    }

    function looks(): var {
        const rows = [];
        for (const [w, h] of [[360, 640], [390, 844], [1280, 800]])
            for (const scale of [1, 2])
                for (const light of ["day", "night"])
                    rows.push({ tag: [w + "x" + h, scale * 100 + " %", light].join(", "), w, h, scale, light });
        return rows;
    }

    function dress(world: World, look: var) {
        world.app.settings.light = look.light === "night" ? DeviceSettings.Night : DeviceSettings.Day;
        world.app.settings.textScale = look.scale;
    }

    // What there is to complain about on what is seen now.
    function judge(main: var, where: string, complaints: var) {
        wait(0);
        for (const complaint of walk.complaints(main.contentItem).concat(contrast.complaints(main.contentItem)))
            complaints.push(where + ": " + complaint);
    }

    // A season as it stands in the middle: counted, missed, ended, lent traps and half-entered work.
    function fill(world: World): var {
        world.standAt(49.9, -97.2, 5);
        const trap = world.addTrap("Slough corner by the old grain elevator", "bertha 1", "2026-06-04", 49.90007, -97.2);
        const other = world.addTrap("Poplar bend", "bertha 2", "2026-06-04", 49.93, -97.19);
        const ended = world.addTrap("Elm flats", "bertha 3", "2026-06-04", 49.95, -97.29);
        world.addTrap("Heron ridge", "bertha 4", "2026-07-02", 49.97, -97.39);
        let visit = "";
        for (const [day, moths] of [["2026-06-15", 4], ["2026-06-22", 40], ["2026-06-29", 110], ["2026-07-06", 20]]) {
            visit = world.addCount(trap, day, moths);
            world.addCount(other, day, moths * 2);
            world.addCount(ended, day, moths);
        }
        world.endTrap(ended, "2026-07-10");
        return { trap, visit, other };
    }

    // What a page is about, where it is not a trap.
    function subjectOf(route: string, ids: var): string {
        switch (route) {
        case "setup":
        case "samples":
        case "settings":
        case "programme":
        case "calendar":
            return "";
        case "protocol":
            return "bertha-armyworm";
        case "history":
            return "visit/" + ids.visit;
        default:
            return ids.trap;
        }
    }

    function test_everyScreen_data() {
        return looks();
    }

    function test_everyScreen(look) {
        const world = createTemporaryObject(worldMaker, test);
        dress(world, look);
        const ids = fill(world);
        const main = world.openWindow(look.w, look.h);
        waitForRendering(main.contentItem);
        const complaints = [];
        verify(main.placeKeys.length >= 3);
        for (const key of main.placeKeys) {
            find(find(main.contentItem, "tabs"), "tab_" + key).clicked();
            compare(main.place, key);
            wait(50);
            judge(main, key, complaints);
        }
        verify(main.pageKeys.length >= 9);
        for (const route of main.pageKeys) {
            main.open(route, subjectOf(route, ids));
            compare(find(main.contentItem, "pages").depth, 1, route);
            wait(50);
            judge(main, route, complaints);
            main.back();
        }
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }

    function test_beforeThereIsAnything_data() {
        return looks();
    }

    function test_beforeThereIsAnything(look) {
        const fresh = createTemporaryObject(freshWorld, test);
        dress(fresh, look);
        const complaints = [];
        const first = fresh.openWindow(look.w, look.h);
        waitForRendering(first.contentItem);
        judge(first, "start", complaints);
        const world = createTemporaryObject(worldMaker, test);
        dress(world, look);
        const main = world.openWindow(look.w, look.h);
        waitForRendering(main.contentItem);
        for (const key of main.placeKeys) {
            find(find(main.contentItem, "tabs"), "tab_" + key).clicked();
            wait(50);
            judge(main, "empty " + key, complaints);
        }
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }

    Component {
        id: paleWords
        Rectangle {
            width: 100
            height: 40
            color: "white"
            Text {
                text: "too pale"
                color: "#999999"
            }
        }
    }

    function test_paleWordsAreFound() {
        const page = createTemporaryObject(paleWords, test);
        compare(contrast.complaints(page).length, 1);
    }

    function test_theContrastOfBlackOnWhiteIsKnown() {
        fuzzyCompare(contrast.ratio(Qt.rgba(0, 0, 0, 1), Qt.rgba(1, 1, 1, 1)), 21, 0.01);
        fuzzyCompare(contrast.ratio(Qt.rgba(0.4667, 0.4667, 0.4667, 1), Qt.rgba(1, 1, 1, 1)), 4.48, 0.01);
    }
}
