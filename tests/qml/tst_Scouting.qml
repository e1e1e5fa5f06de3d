// SPDX-License-Identifier: MIT
// A field is scouted and decided as a person does it: frames by taps, money typed, the verdict read; and what is kept.
import QtQuick
import QtTest

LifeStory {
    id: test

    name: "Scouting"

    function begun() {
        const at = standing();
        at.site = at.world.fieldOf(at.trap, "site");
        return at;
    }

    // Begins a walk in the only field; at the tallies of its first frame.
    function walking() {
        const at = begun();
        open(at, "walk", at.trap);
        tap(pageOn(at), "stage_75");
        const page = pageOn(at);
        tap(page, "begin");
        tryVerify(() => pageOn(at) !== page && findChild(pageOn(at), "read"), 5000, "how to look, before the first frame");
        settle(at);
        tap(pageOn(at), "read");
        settle(at);
        at.walk = only(at, "walk");
        return at;
    }

    function settle(at) {
        waitForRendering(at.main.contentItem, 200);
    }

    function count(at, size, larvae) {
        for (let i = 0; i < larvae; ++i)
            tap(find(pageOn(at), "size" + size), "plus");
    }

    function keepFrame(at) {
        const before = pageOn(at).model.framesKept;
        tap(pageOn(at), "keep");
        tryVerify(() => pageOn(at).model.framesKept === before + 1, 5000, "the frame is kept");
        settle(at);
    }

    // Frames kept at once, where the way they were counted does not matter.
    function addFrames(at, larvae) {
        larvae.forEach((count, i) => at.world.keepRecord("frame", { walk: at.walk, day: "2026-07-14", at_ms: 1784000000000 + i, stop: i + 1,
                larvae: count, by_size: "small:0 medium:" + count + " large:0" }));
    }

    function decide(at, cost, price) {
        open(at, "decide", at.walk);
        tap(pageOn(at), "chip_money");
        type(pageOn(at), "cost", cost);
        type(pageOn(at), "price", price);
        settle(at);
    }

    function read(at, name) {
        return find(pageOn(at), name).text;
    }

    function test_aWalkIsBegunAndFramesAreCounted() {
        const at = walking();
        compare(fields(at, at.walk, ["site", "pest", "stage_bbch", "frame_cm2", "day"]), at.site + " bertha-armyworm 75 2500 2026-07-14");
        compare(read(at, "title") ?? pageOn(at).model.title, "Slough corner · frame 1");
        count(at, 0, 2);
        count(at, 1, 3);
        count(at, 2, 1);
        tap(find(pageOn(at), "size1"), "minus");
        tap(pageOn(at), "sick");
        keepFrame(at);
        const frame = only(at, "frame");
        compare(fields(at, frame, ["walk", "larvae", "by_size", "sick", "stop"]), at.walk + " 5 small:2 medium:2 large:1 1 1");
        compare(pageOn(at).model.title, "Slough corner · frame 2");
        compare(pageOn(at).model.larvae, 0, "the next frame starts at none");
    }

    function test_anEmptyFrameIsAFrame() {
        const at = walking();
        keepFrame(at);
        compare(fields(at, only(at, "frame"), ["larvae", "sick"]), "0 0");
    }

    function test_undoTakesBackTapByTap() {
        const at = walking();
        count(at, 1, 2);
        tap(pageOn(at), "sick");
        tap(pageOn(at), "undo");
        tap(pageOn(at), "undo");
        compare([pageOn(at).model.larvae, pageOn(at).model.sick], [1, 0]);
        tap(pageOn(at), "undo");
        verify(!find(pageOn(at), "undo").visible, "nothing is left to take back");
    }

    function test_halfAFrameSurvivesAKill() {
        const at = walking();
        count(at, 2, 4);
        at.world.restart();
        open(at, "frames", at.walk);
        compare(pageOn(at).model.larvae, 4);
        tap(pageOn(at), "undo");
        compare(pageOn(at).model.larvae, 3, "and can still be taken back");
        keepFrame(at);
        compare(at.world.fieldOf(only(at, "frame"), "larvae"), 3);
        compare(at.world.draftKeys().length, 0);
    }

    function test_theWalkGoesOnAnotherDay() {
        const at = walking();
        addFrames(at, [4, 9, 2]);
        at.main = at.world.openWindow(390, 844);
        waitForRendering(at.main.contentItem);
        find(find(at.main.contentItem, "tabs"), "tab_larvae").clicked();
        tryVerify(() => findChild(at.main.contentItem, "openWalk0"));
        settle(at);
        const row = find(at.main.contentItem, "openWalk0");
        compare([row.title, row.subtitle, row.rightText], ["Slough corner", "3 frames · 14 Jul", "20 per m²"]);
        mouseClick(row);
        tryVerify(() => pageOn(at).model?.framesKept === 3);
        compare(pageOn(at).model.walk, at.walk);
    }

    function test_framesOfOneStopAreOneUnit() {
        const at = walking();
        count(at, 1, 2);
        keepFrame(at);
        tap(pageOn(at), "sameStop");
        count(at, 1, 1);
        keepFrame(at);
        keepFrame(at);
        const stops = at.world.recordsOf("frame").map(id => at.world.fieldOf(id, "stop"));
        compare(stops, [1, 1, 2]);
    }

    function test_tooNearTheLastStopIsSaidAndNeverBlocks() {
        const at = begun();
        at.world.standAt(52.1, -106.6, 3);
        open(at, "walk", at.trap);
        const page = pageOn(at);
        tap(page, "begin");
        tryVerify(() => pageOn(at) !== page && findChild(pageOn(at), "read"));
        settle(at);
        tap(pageOn(at), "read");
        settle(at);
        at.walk = only(at, "walk");
        tryVerify(() => at.world.app.position !== null);
        keepFrame(at);
        tryVerify(() => pageOn(at).model.isTooNear, 5000, "the second frame lies where the first did");
        verify(find(pageOn(at), "place").visible);
        keepFrame(at);
        compare(at.world.recordsOf("frame").length, 2);
    }

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

    function test_aFrameIsCorrectedFromItsHistory() {
        const at = walking();
        addFrames(at, [4, 9, 2]);
        open(at, "frames", at.walk);
        tap(pageOn(at), "kept0");
        waitForRendering(pageOn(at), 500);
        compare(find(pageOn(at), "pageHead").title, "Frame");
        tap(pageOn(at), "correct");
        waitForRendering(pageOn(at), 500);
        type(pageOn(at), "entry_larvae", "20");
        const page = pageOn(at);
        tap(page, "keep");
        tryVerify(() => pageOn(at) !== page);
        const frames = at.world.recordsOf("frame");
        compare(frames.map(id => at.world.fieldOf(id, "larvae")), [4, 9, 20]);
        open(at, "frames", at.walk);
        compare(find(pageOn(at), "kept0").rightText, "20 larvae");
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

    function test_finishingLeadsToTheDecision() {
        const at = walking();
        count(at, 1, 3);
        keepFrame(at);
        count(at, 1, 1);
        const page = pageOn(at);
        tap(page, "stop");
        tryVerify(() => pageOn(at) !== page);
        compare(at.world.recordsOf("frame").length, 2, "the frame that was begun is kept as well");
        compare(at.world.fieldOf(at.walk, "finished"), true);
        verify(findChild(pageOn(at), "verdict"));
    }

    function test_everythingFits_data() {
        const rows = [];
        for (const [width, height] of [[360, 640], [390, 844], [1280, 800]]) {
            for (const scale of [1, 2]) {
                for (const light of ["day", "night"]) {
                    for (const page of ["walk", "how", "frames", "answer", "money", "timing", "working"])
                        rows.push({ tag: page + " " + width + "x" + height + " " + scale * 100 + " " + light, page, width, height, scale, light });
                }
            }
        }
        return rows;
    }

    function test_everythingFits(row) {
        const at = begun();
        at.world.app.settings.textScale = row.scale;
        at.world.app.settings.light = row.light === "night" ? 2 : 1;
        const walk = at.world.keepRecord("walk", { site: at.site, season: at.world.fieldOf(at.site, "season"), pest: "bertha-armyworm",
                protocol_version: "2026-1", day: "2026-07-14", at_ms: 1784000000000, offset_min: 0, stage_bbch: 75, frame_cm2: 2500 });
        at.walk = walk;
        if (row.page !== "how")
            addFrames(at, [4, 9, 2, 15, 0, 6]);
        at.world.keepRecord("decision", { walk, day: "2026-07-14", cost: "12", cost_unit: "CAD/ac", price: "10", price_unit: "CAD/bu",
                label_days: 7, cutting_day: "2026-08-20" });
        const route = row.page === "walk" ? "walk" : row.page === "frames" || row.page === "how" ? "frames" : "decide";
        open(at, route, route === "walk" ? at.trap : walk, row.width, row.height);
        if (route === "decide")
            tap(pageOn(at), "chip_" + row.page);
        settle(at);
        compare(test.walk.complaints(pageOn(at)).join("\n"), "");
        at.world.app.settings.textScale = 1;
        at.world.app.settings.light = 1;
    }
}
