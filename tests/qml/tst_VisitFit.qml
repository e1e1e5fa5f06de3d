// SPDX-License-Identifier: MIT
// Each step and sheet of the visit in each size, by day and by night, in small and large type; and a visit by touch.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Theme

VisitStory {
    id: test

    readonly property Walk walk: Walk {}
    property list<string> found

    name: "VisitFit"

    function cleanup() {
        Theme.dark = false;
        Theme.textScale = 1;
    }

    function look(what: string) {
        settle();
        for (const complaint of walk.lasting(step(), wait))
            test.found.push(what + ": " + complaint);
    }

    function lookAtSheet(name: string) {
        const sheet = findChild(main, name);
        sheet.open();
        tryVerify(() => sheet.opened);
        settle();
        for (const complaint of walk.lasting(sheet.contentItem, wait))
            test.found.push(name + ": " + complaint);
        sheet.settle();
        tryVerify(() => !sheet.opened);
    }

    function test_everyStep_data() {
        const rows = [];
        for (const [width, height] of [[360, 640], [390, 844], [1280, 800]]) {
            for (const textScale of [1, 2]) {
                for (const dark of [false, true])
                    rows.push({ tag: width + "x" + height + " at " + textScale + (dark ? " by night" : " by day"), width, height, textScale, dark });
            }
        }
        return rows;
    }

    function test_everyStep(row) {
        test.found = [];
        begin(row.width, row.height);
        world.app.settings.textScale = row.textScale;
        world.app.settings.light = row.dark ? DeviceSettings.Night : DeviceSettings.Day;
        world.addTrap("Slough corner", "bertha trap 2", "2026-07-07", 52.10003, -106.6);
        open("visit", trap, row.width, row.height);
        compare(Theme.textScale, row.textScale);
        const model = visit();
        look("nothing counted");
        for (const sheet of ["otherSheet", "couldNotSheet", "zeroSheet", "keypadSheet"])
            lookAtSheet(sheet);
        model.count.couldNotCount("fallen");
        look("could not count");
        model.undo();
        findChild(page, "pages").currentItem.over = "guide";
        look("guide");
        findChild(page, "pages").currentItem.over = "heavy";
        model.heavy.setWhole(412);
        model.heavy.addPart();
        for (const [part, amount, moths] of [[0, 20.4, 460], [1, 19.7, 580]]) {
            model.heavy.parts.setAmount(part, amount);
            model.heavy.parts.setCounted(part, moths);
        }
        look("heavy catch");
        model.heavy.use();
        findChild(page, "pages").currentItem.over = "";
        look("estimate");
        model.count.bin = "unsure";
        model.count.add(3);
        look("not sure");
        model.next();
        look("trap");
        model.trap.setCanopy(97);
        model.trap.state = "lure_gone";
        look("trap too low");
        model.next();
        look("lure");
        model.lure.setSprayed(true);
        model.lure.setReentry(24);
        model.lure.sprayedDay = "2026-07-14";
        lookAtSheet("sprayedSheet");
        model.lure.detailed = true;
        model.lure.lureChanged = true;
        model.lure.mothsAlive = true;
        look("lure in detail");
        model.lure.acknowledgeHandling();
        model.lure.lureExpiry = "2026-01-01";
        look("new lure");
        model.next();
        model.done.remark = "a remark ".repeat(20);
        look("done");
        lookAtSheet("askSheet");
        model.keep();
        tryCompare(model, "step", "kept");
        look("kept");
        open("samples", "", row.width, row.height);
        tryVerify(() => findChild(step(), "sample_0"));
        look("samples");
        visit().chosen = world.recordsOf("sample")[0];
        lookAtSheet("sampleSheet");
        visit().send("the museum in the next valley");
        tryCompare(visit(), "state", "sent");
        lookAtSheet("sampleSheet");
        world.standAt(52.1, -106.6, 5);
        open("visit", world.addTrap("Elm", "3", "2026-07-07", 52.10002, -106.6), row.width, row.height);
        tryCompare(visit(), "step", "which");
        look("which trap");
        compare(Array.from(test.found).join("\n"), "");
    }

    // The thumb reaches what is counted with: number, pad and keys stand on the screen together.
    function test_theCountNeedsNoScrolling_data() {
        return [{ tag: "360x640", width: 360, height: 640 }, { tag: "390x844", width: 390, height: 844 }, { tag: "1280x800", width: 1280, height: 800 }];
    }

    function test_theCountNeedsNoScrolling(row) {
        begin(row.width, row.height);
        count(3);
        settle();
        const top = find("trail").mapToItem(page, 0, find("trail").height).y;
        const bottom = find("next").mapToItem(page, 0, 0).y;
        for (const name of ["number", "bins", "pad", "tallyKeys"]) {
            const item = find(name);
            const y = item.mapToItem(page, 0, 0).y;
            verify(y >= top && y + item.height <= bottom, name + " from " + y + " to " + (y + item.height) + " in " + top + " to " + bottom);
        }
    }

    function touch(name: string) {
        const item = find(name);
        settle();
        step().reveal(item);
        verify(item.visible && item.mapToItem(page, 0, item.height / 2).y < page.height, name);
        const event = touchEvent(item);
        event.press(0, item, item.width / 2, item.height / 2);
        event.commit();
        event.release(0, item, item.width / 2, item.height / 2);
        event.commit();
    }

    function test_aVisitByTouchInLargeType() {
        begin(360, 640);
        world.app.settings.textScale = 2;
        open("visit", trap, 360, 640);
        for (let i = 0; i < 12; ++i)
            touch("pad");
        touch("tally_-1");
        touch("bin_bees");
        touch("pad");
        for (const wanted of ["trap", "lure", "done"]) {
            touch("next");
            compare(visit().step, wanted);
        }
        touch("keep");
        tryCompare(visit(), "step", "kept");
        compare([kept(visit().visitId, "pest"), kept(visit().visitId, "bees")], [11, 1]);
    }
}
