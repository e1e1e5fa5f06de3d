// SPDX-License-Identifier: MIT
// A field is scouted as a person does it: frames by taps, one after the other, and what is kept of them.
import QtQuick
import QtTest

ScoutingStory {
    name: "Scouting"

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
}
