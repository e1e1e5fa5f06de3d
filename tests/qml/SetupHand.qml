// SPDX-License-Identifier: MIT
// The hand that sets up a trap in the tests: it scrolls, taps and types, and knows the pages by their names.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

TestCase {
    id: hand

    property World world
    property Item page
    property string day

    Component {
        id: someWorld
        World {
            today: hand.day
        }
    }

    TextEdit {
        id: clipboard
    }

    function init() {
        hand.day = "2026-06-03";
    }

    function cleanup() {
        hand.page = null;
    }

    function makeWorld() {
        hand.world = createTemporaryObject(someWorld, hand);
    }

    function open(subject: string, width = 390, height = 844) {
        hand.page = hand.world.openWindow(width, height, "setup", subject).contentItem;
        waitForRendering(hand.page);
        tryVerify(() => find("step").item !== null && find("next").enabled);
        // What the season holds comes from another thread.
        tryVerify(() => find("step").item.model.trap.tag.length > 0);
    }

    function begin(subject = "") {
        makeWorld();
        open(subject);
    }

    function find(name: string): Item {
        const found = findChild(findChild(hand.page, "pages"), name);
        verify(found, name);
        return found;
    }

    function shown(name: string): bool {
        const found = findChild(findChild(hand.page, "pages"), name);
        return found !== null && found.visible;
    }

    function at(): string {
        return find("trail").page;
    }

    // Brings a thing under the finger first, as a person scrolls.
    function bring(item: Item): Item {
        find("setupFrame").reveal(item);
        verify(item.visible);
        return item;
    }

    function tap(name: string) {
        mouseClick(bring(find(name)));
    }

    function pick(name: string, key: string) {
        mouseClick(bring(findChild(find(name), "chip_" + key)));
    }

    function boxOf(name: string): Item {
        const box = bring(findChild(find(name), "box"));
        mouseClick(box);
        verify(box.activeFocus, name);
        box.selectAll();
        return box;
    }

    function enter(name: string, text: string) {
        boxOf(name);
        keyClick(Qt.Key_Delete);
        for (const c of text)
            keyClick(c);
    }

    // What no keyboard of the test has: emoji, other scripts, long texts.
    function paste(name: string, text: string) {
        boxOf(name);
        clipboard.text = text;
        clipboard.selectAll();
        clipboard.copy();
        keySequence(StandardKey.Paste);
    }

    function error(name: string): string {
        const words = findChild(find(name), "error");
        return words && words.visible ? words.text : "";
    }

    function arrive(expected: string) {
        tryVerify(() => at() === expected, 5000, "on the page " + expected);
        waitForRendering(hand.page, 200); // it may be drawn already
    }

    function next(expected: string) {
        tryVerify(() => find("next").enabled);
        mouseClick(find("next"));
        arrive(expected);
    }

    function goBack(expected: string) {
        mouseClick(find("back"));
        arrive(expected);
    }

    function stay() {
        const before = at();
        mouseClick(find("next"));
        compare(at(), before);
    }

    function stand(lat: real, lon: real) {
        hand.world.standAt(lat, lon, 12);
        tryVerify(() => find("accuracy").lines.length > 0 && find("accuracy").lines[0] === "12 fixes averaged");
    }

    // From where it is to the page wanted, entering what a careful person enters.
    function goTo(wanted: string) {
        const acts = {
            field: () => enter("siteName", "Elm corner"),
            yes: () => enter("landowner", "Ada"),
            place: () => stand(52.1579, -106.6702),
            trap: () => tap("cleaned"),
            stake: () => enter("canopy", "25")
        };
        const after = { field: "yes", yes: "place", place: "around", around: "trap", trap: "handling", handling: "lure",
            lure: "strip", strip: "stake", stake: "last", last: "kept" };
        while (at() !== wanted) {
            if (at() in acts)
                acts[at()]();
            next(after[at()]);
        }
    }

    function newest(kind: string): string {
        const ids = kind === "trap" ? hand.world.trapIds() : hand.world.siteIds();
        return ids[ids.length - 1];
    }

    function checkFields(kind: string, fields) {
        for (const [field, value] of Object.entries(fields)) {
            const kept = hand.world.fieldOf(newest(kind), field);
            // Numbers of the store come wider than those of the test.
            compare(typeof value === "number" ? Number(kept) : kept, value, field);
        }
    }
}
