// SPDX-License-Identifier: MIT
// A walk is held against money and time: what is typed, what is refused, the verdict, and what is kept.
import QtQuick
import QtTest

ScoutingStory {
    name: "Decide"

    function test_theVerdict_data() {
        return [
                    { tag: "near the threshold", larvae: [4, 9, 2, 15, 0, 6, 3, 8, 1, 7], cost: "12", price: "10", verdict: "too_close" },
                    { tag: "none found", larvae: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0], cost: "12", price: "10", verdict: "below" },
                    { tag: "far above", larvae: [14, 19, 12, 15, 10, 16, 13, 18, 11, 17], cost: "12", price: "10", verdict: "above" },
                    { tag: "three frames", larvae: [14, 19, 12], cost: "12", price: "10", verdict: "too_close" },
                    { tag: "control is dear", larvae: [4, 9, 2, 15, 0, 6, 3, 8, 1, 7], cost: "40", price: "6", verdict: "below" }
                ];
    }

    function test_theVerdict(row) {
        const at = walking();
        addFrames(at, row.larvae);
        decide(at, row.cost, row.price);
        compare(find(pageOn(at), "verdict").verdict, row.verdict);
        verify(find(pageOn(at), "caution0").text.length > 0, "cautions stand beside every verdict");
        tap(pageOn(at), "keep");
        tryVerify(() => pageOn(at).model.isKept);
        const decision = only(at, "decision");
        compare(fields(at, decision, ["walk", "cost", "cost_unit", "price", "price_unit", "verdict", "protocol_version"]),
                [at.walk, row.cost, "CAD/ac", row.price, "CAD/bu", row.verdict, "2026-1"].join(" "));
    }

    function test_theVerdictIsReadAloudInOnePiece() {
        const at = walking();
        addFrames(at, [4, 9, 2, 15, 0, 6, 3, 8, 1, 7]);
        decide(at, "12", "10");
        const panel = find(pageOn(at), "verdict");
        verify(panel.Accessible.name.startsWith("Too close to call. 22 per m². likely 13 to 44 · your threshold 21. "), panel.Accessible.name);
    }

    function test_theWorkingCanBeCheckedByHand() {
        const at = walking();
        addFrames(at, [4, 9, 2, 15, 0]);
        decide(at, "12", "10");
        verify(read(at, "thresholdLine").includes("20.7"), read(at, "thresholdLine"));
        tap(pageOn(at), "chip_working");
        settle(at);
        const lines = [0, 1, 2].map(i => findChild(pageOn(at), "step" + i)?.text ?? "");
        verify(lines.some(line => line.includes("0.58")), lines.join("\n"));
        verify(find(pageOn(at), "errorRates").sentences.length >= 3);
    }

    function test_inPartsAndInOtherUnits() {
        const at = walking();
        open(at, "decide", at.walk);
        tap(pageOn(at), "chip_money");
        tap(pageOn(at), "inParts");
        settle(at);
        type(pageOn(at), "product", "8");
        type(pageOn(at), "application", "3.5");
        type(pageOn(at), "tracks", "0.5");
        type(pageOn(at), "price", "440.925");
        tap(find(pageOn(at), "priceUnit"), "chip_CAD/t");
        settle(at);
        verify(read(at, "thresholdLine").includes("20.7"), read(at, "thresholdLine"));
        tap(pageOn(at), "keep");
        tryVerify(() => pageOn(at).model.isKept);
        compare(fields(at, only(at, "decision"), ["cost", "cost_product", "cost_application", "cost_tracks", "price_unit"]),
                "undefined 8 3.5 0.5 CAD/t");
    }

    function test_aDrySeasonIsTheUsersOwn() {
        const at = walking();
        addFrames(at, [4, 9, 2, 15, 0, 6, 3, 8, 1, 7]);
        decide(at, "12", "10");
        tap(pageOn(at), "dry");
        settle(at);
        compare(find(find(pageOn(at), "divisor"), "box").text, "1.48");
        verify(read(at, "thresholdLine").includes("14.0") || read(at, "thresholdLine").includes("14"), read(at, "thresholdLine"));
        verify(find(pageOn(at), "notes").sentences.join(" ").includes("1.48"), "and is always said");
    }

    function test_aCellOfTheTableIsTaken() {
        const at = walking();
        addFrames(at, [4, 9, 2, 15, 0, 6, 3, 8, 1, 7]);
        decide(at, "12", "10");
        verify(pageOn(at).model.grid.columns >= 5);
        tap(pageOn(at), "cell" + (2 * pageOn(at).model.grid.columns + 3));
        settle(at);
        compare(find(find(pageOn(at), "cost"), "box").text, pageOn(at).model.form.cost);
        verify(Number(pageOn(at).model.form.cost) < 12);
        compare(pageOn(at).model.form.price, "10");
    }

    function test_aFingerDrawnOverTheTableMovesTheMoney() {
        const at = walking();
        addFrames(at, [4, 9, 2, 15, 0, 6, 3, 8, 1, 7]);
        decide(at, "12", "10");
        const columns = pageOn(at).model.grid.columns;
        tap(pageOn(at), "cell" + (3 * columns + 3)); // the own one, brought into sight
        settle(at);
        const from = find(pageOn(at), "cell" + (3 * columns + 3));
        const to = find(pageOn(at), "cell" + (4 * columns + 4));
        mousePress(from);
        for (let step = 1; step <= 8; ++step)
            mouseMove(from, from.width / 2 + (from.width + 2) * step / 8, from.height / 2 + (from.height + 2) * step / 8);
        mouseRelease(to);
        settle(at);
        verify(Number(pageOn(at).model.form.cost) > 12, pageOn(at).model.form.cost);
        verify(Number(pageOn(at).model.form.price) > 10, pageOn(at).model.form.price);
    }

    function test_badMoney_data() {
        return [
                    { tag: "letters", cost: "twelve", price: "10" },
                    { tag: "zero", cost: "0", price: "10" },
                    { tag: "negative", cost: "-12", price: "10" },
                    { tag: "a price of nothing", cost: "12", price: "0" },
                    { tag: "absurd", cost: "1000000000", price: "10" },
                    { tag: "the other unit", cost: "12", price: "440" },
                    { tag: "two marks", cost: "1,250.5", price: "10" }
                ];
    }

    function test_badMoney(row) {
        const at = walking();
        decide(at, row.cost, row.price);
        verify(find(pageOn(at), "moneyError").visible, "it is said what is wrong");
        compare(find(pageOn(at), "verdict").verdict, "");
        compare(find(find(pageOn(at), "cost"), "box").text, row.cost, "what was typed stays");
    }

    function test_aHalfTypedDecisionSurvivesAKill() {
        const at = walking();
        decide(at, "12", "10");
        at.world.restart();
        open(at, "decide", at.walk);
        compare([pageOn(at).model.form.cost, pageOn(at).model.form.price], ["12", "10"]);
        compare(at.world.recordsOf("decision").length, 0);
    }

    function test_theNextFieldBeginsWithTheSameMoney() {
        const at = walking();
        decide(at, "12", "10");
        tap(pageOn(at), "keep");
        tryVerify(() => pageOn(at).model.isKept);
        open(at, "walk", "");
        tap(find(pageOn(at), "site"), "chip_");
        type(pageOn(at), "name", "East quarter");
        const page = pageOn(at);
        tap(page, "begin");
        tryVerify(() => pageOn(at) !== page && pageOn(at).model?.hasThreshold === true, 5000);
        verify(find(pageOn(at), "lines").visible, "the lines stand there from the first frame");
    }
}
