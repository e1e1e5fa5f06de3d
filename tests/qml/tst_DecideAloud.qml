// SPDX-License-Identifier: MIT
// A decision is heard in the order in which a person would tell it, on tall screens and on low ones.
import QtQuick
import QtTest
import Duskrow.Testing

ScoutingStory {
    name: "DecideAloud"

    function initTestCase() {
        Speech.listen();
    }

    function test_theAnswerIsToldInOrder_data() {
        return [
                    { tag: "phone", width: 390, height: 844 },
                    { tag: "low, where the head scrolls along", width: 640, height: 360 },
                    { tag: "desk", width: 1280, height: 800 }
                ];
    }

    // Where in what was said a part stands, after the parts before it.
    function place(said, part, from) {
        for (let i = from; i < said.length; ++i) {
            if (said[i].startsWith(part))
                return i;
        }
        return -1;
    }

    function test_theAnswerIsToldInOrder(row) {
        const at = walking();
        addFrames(at, [4, 9, 2, 15, 0, 6, 3, 8, 1, 7]);
        at.world.keepRecord("decision", { walk: at.walk, day: "2026-07-14", cost: "12", cost_unit: "CAD/ac", price: "10", price_unit: "CAD/bu",
                label_days: 7, cutting_day: "2026-08-20" });
        open(at, "decide", at.walk, row.width, row.height);
        const model = pageOn(at).model;
        const said = Speech.of(pageOn(at));
        const inOrder = ["Slough corner", "Too close to call. 22 per m². likely 13 to 44", "The economic threshold is 20.7",
            "Timing: " + model.timing, "Why", model.reasons[0], "What would change it", model.changes[0], "Cautions", model.cautions[0],
            "The sheet"];
        let from = 0;
        for (const part of inOrder) {
            const found = place(said, part, from);
            verify(found >= 0, part + " is missing or too early in:\n" + said.join("\n"));
            from = found + 1;
        }
        // None is told before its turn as well.
        for (const part of ["Slough corner", "Too close to call. ", "The economic threshold", "Timing: ", "What would change it", "Cautions"])
            compare(said.filter(one => one.startsWith(part)).length, 1, part + " is told once in:\n" + said.join("\n"));
    }

    function test_hiddenViewsAreNotHeard() {
        const at = walking();
        addFrames(at, [4, 9, 2, 15, 0]);
        decide(at, "12", "10");
        const money = Speech.of(pageOn(at));
        verify(place(money, "Control costs, all together", 0) > 0, money.join("\n"));
        compare(place(money, "What would change it", 0), -1);
        tap(pageOn(at), "chip_timing");
        settle(at);
        const timing = Speech.of(pageOn(at));
        compare(place(timing, "Control costs, all together", 0), -1);
        verify(place(timing, pageOn(at).model.timing, 0) < place(timing, "Days before harvest, from the label", 0), timing.join("\n"));
    }
}
