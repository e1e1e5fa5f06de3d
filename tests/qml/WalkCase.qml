// SPDX-License-Identifier: MIT
// What every walk needs: the sizes and lights to look in, a season to look at, and the judgement of a page.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing
import Duskrow.Theme

TestCase {
    when: windowShown
    visible: true
    width: 400
    height: 400

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
        for (const complaint of walk.lasting(main.contentItem, wait).concat(contrast.complaints(main.contentItem)))
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
        const site = world.fieldOf(trap, "site");
        const walk = world.keepRecord("walk", { site, season: world.fieldOf(site, "season"), pest: "bertha-armyworm", protocol_version: "2026-1",
                day: "2026-07-14", at_ms: 1784000000000, offset_min: 0, stage_bbch: 75, frame_cm2: 2500 });
        [4, 9, 2, 15, 0, 6].forEach((larvae, i) => world.keepRecord("frame", { walk, day: "2026-07-14", at_ms: 1784000000000 + i, stop: i + 1,
                larvae, by_size: "small:1 medium:" + (larvae > 0 ? larvae - 1 : 0) + " large:0" }));
        world.keepRecord("decision", { walk, day: "2026-07-14", cost: "12", cost_unit: "CAD/ac", price: "10", price_unit: "CAD/bu" });
        return { trap, visit, other, walk, member: world.memberId("Wren"), file: world.writeFile() };
    }

    // What a page is about, where it is not a trap.
    function subjectOf(route: string, ids: var): string {
        switch (route) {
        case "setup":
        case "samples":
        case "walk":
        case "settings":
        case "programme":
        case "calendar":
        case "round":
        case "exchange":
        case "members":
        case "invite":
        case "differences":
        case "desk":
        case "map":
        case "years":
        case "winter":
        case "temperatures":
        case "typing":
        case "publish":
        case "news":
        case "import":
        case "join":
            return "";
        case "protocol":
            return "bertha-armyworm";
        case "carried":
            return ids.file;
        case "member":
            return ids.member;
        case "frames":
        case "decide":
        case "sheet":
            return ids.walk;
        case "correct":
            return "trap/" + ids.trap;
        case "history":
            return "visit/" + ids.visit;
        default:
            return ids.trap;
        }
    }
}
