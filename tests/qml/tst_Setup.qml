// SPDX-License-Identifier: MIT
// Setting up a trap as a newcomer does it in the field: by taps and keys, page by page.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

TestCase {
    id: test

    property World world
    property Item page

    name: "Setup"
    when: windowShown

    Component {
        id: juneWorld
        World {
            today: "2026-06-03"
        }
    }

    TextEdit {
        id: clipboard
    }

    function begin(subject = "") {
        test.world = createTemporaryObject(juneWorld, test);
        test.open(subject);
    }

    function open(subject) {
        test.page = test.world.openWindow(390, 844, "setup", subject).contentItem;
        waitForRendering(test.page);
    }

    function find(name: string): Item {
        const found = findChild(test.page, name);
        verify(found, name);
        return found;
    }

    function shown(name: string): bool {
        const found = findChild(test.page, name);
        return found !== null && found.visible;
    }

    // Brings a thing on the page under the finger first, as a person scrolls.
    function tap(name: string) {
        const item = find(name);
        findChild(test.page, "setupFrame").reveal(item);
        verify(item.visible, name + " can be seen");
        mouseClick(item);
    }

    function enter(name: string, text: string) {
        const box = findChild(find(name), "box");
        findChild(test.page, "setupFrame").reveal(box);
        mouseClick(box);
        verify(box.activeFocus, name);
        box.selectAll();
        keyClick(Qt.Key_Delete);
        for (const c of text)
            keyClick(c);
    }

    // What no keyboard of the test has: emoji, other scripts, long texts.
    function paste(name: string, text: string) {
        const box = findChild(find(name), "box");
        findChild(test.page, "setupFrame").reveal(box);
        mouseClick(box);
        box.selectAll();
        clipboard.text = text;
        clipboard.selectAll();
        clipboard.copy();
        keySequence(StandardKey.Paste);
    }

    function next(expected: string) {
        mouseClick(find("next"));
        tryVerify(() => find("trail").page === expected, 2000, "on the page " + expected + ", not " + find("trail").page);
        waitForRendering(test.page);
    }

    function chip(name: string, key: string): Item {
        const found = findChild(find(name), "chip_" + key);
        verify(found, name + " " + key);
        return found;
    }

    function checkFields(kind: string, id: string, fields) {
        for (const [field, value] of Object.entries(fields)) {
            const kept = world.fieldOf(kind, id, field);
            // Numbers of the store come wider than those of the test.
            compare(typeof value === "number" ? Number(kept) : kept, value, field);
        }
    }

    function goThrough(place: bool) {
        enter("siteName", "Elm corner");
        tryVerify(() => find("crop").chosen === "canola");
        next("yes");
        enter("landowner", "Ada");
        next("place");
        if (place) {
            test.world.standAt(52.1579, -106.6702, 12);
            tryVerify(() => find("accuracy").lines.length > 0 && find("accuracy").lines[0] === "12 fixes averaged");
        }
        next("around");
        next("trap");
        tap("cleaned");
        next("handling");
        next("lure");
        next("strip");
        next("stake");
        enter("canopy", "25");
        next("last");
    }

    function keepIt() {
        mouseClick(find("next"));
        tryVerify(() => find("trail").page === "kept");
    }

    function test_aTrapIsSetUp() {
        begin();
        const before = world.changes();
        goThrough(true);
        compare(world.changes(), before, "nothing is kept before the last tap");
        keepIt();
        compare(world.changes(), before + 2, "a site and a trap");
        compare(world.draftKeys(), []);
        const site = world.recordsOf("site")[0];
        const trap = world.recordsOf("trap")[0];
        const siteFields = { name: "Elm corner", crop: "canola", landowner: "Ada", agreed_day: "2026-06-03" };
        checkFields("site", site, siteFields);
        const trapFields = { site, tag: "1", pest: "bertha-armyworm", trap_type: "green-bucket", set_day: "2026-06-03",
            lat_e7: 521579000, lon_e7: -1066702000, fix_method: "satellite", fix_count: 12, cleaned: true,
            handling_read: true, lure_in: true, strip_in: true, entrance_mm: 1000, canopy_mm: 250,
            height_rule: "follow_canopy", edge_distance_mm: undefined, replaces: undefined, photo: undefined };
        checkFields("trap", trap, trapFields);
        verify(world.fieldOf("trap", trap, "accuracy_mm") > 0);
        verify(world.fieldOf("trap", trap, "fix_at_ms") > 0);
        verify(find("next_0").value.startsWith("Monday 8 June"), find("next_0").value);
    }
}
