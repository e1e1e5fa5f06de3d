// SPDX-License-Identifier: MIT
// What is noted besides larvae: a dry season, and pods; by taps, kept, found again, and used in the decision.
import QtQuick
import QtTest

ScoutingStory {
    name: "ScoutingNotes"

    // Begins a walk after a note; at the first frame.
    function walkingIn(dry) {
        const at = begun();
        open(at, "walk", at.trap);
        if (dry)
            tap(pageOn(at), "drySeason");
        const page = pageOn(at);
        tap(page, "begin");
        tryVerify(() => pageOn(at) !== page && findChild(pageOn(at), "read"), 5000, "how to look, before the first frame");
        settle(at);
        tap(pageOn(at), "read");
        settle(at);
        at.walk = only(at, "walk");
        return at;
    }

    function test_aDrySeasonIsNotedAtTheStart() {
        const at = walkingIn(true);
        compare(at.world.fieldOf(at.walk, "dry_season"), true);
        verify(find(pageOn(at), "pageHead").subtitle.endsWith("dry season"), find(pageOn(at), "pageHead").subtitle);
        at.world.restart();
        open(at, "frames", at.walk);
        verify(find(pageOn(at), "pageHead").subtitle.endsWith("dry season"), "and is found again");
    }

    function test_withoutTheNoteNothingIsSaid() {
        const at = walkingIn(false);
        compare(fields(at, at.walk, ["dry_season"]), "undefined");
        compare(find(pageOn(at), "pageHead").subtitle, "0.25 m², searched to the ground");
        addFrames(at, [4, 9, 2, 15, 0]);
        decide(at, "12", "10");
        verify(!find(pageOn(at), "dryNote").visible);
    }

    function test_theNoteIsMadeWhileWalking() {
        const at = walkingIn(false);
        keepFrame(at);
        tap(pageOn(at), "history");
        waitForRendering(pageOn(at), 500);
        tap(pageOn(at), "correct");
        waitForRendering(pageOn(at), 500);
        tap(find(pageOn(at), "entry_dry_season"), "chip_yes");
        const page = pageOn(at);
        tap(page, "keep");
        tryVerify(() => pageOn(at) !== page);
        compare(at.world.fieldOf(at.walk, "dry_season"), true);
        open(at, "frames", at.walk);
        verify(find(pageOn(at), "pageHead").subtitle.endsWith("dry season"));
    }

    // The note asks; the divisor is the person's own to switch on.
    function test_theDecisionAsksAboutTheNote() {
        const at = walkingIn(true);
        addFrames(at, [4, 9, 2, 15, 0, 6, 3, 8, 1, 7]);
        decide(at, "12", "10");
        const note = find(pageOn(at), "dryNote");
        verify(note.visible && note.text.includes("dry season on the walk"), note.text);
        verify(read(at, "thresholdLine").includes("20.7"), "by itself the note lowers nothing");
        tap(note, "noticeAction");
        settle(at);
        verify(!note.visible, "once used it asks no more");
        compare(find(find(pageOn(at), "divisor"), "box").text, "1.48");
        verify(read(at, "thresholdLine").includes("14.0"), read(at, "thresholdLine"));
        tap(pageOn(at), "keep");
        tryVerify(() => pageOn(at).model.isKept);
        compare(at.world.fieldOf(only(at, "decision"), "dry_divisor"), "1.48");
        open(at, "sheet", at.walk);
        const facts = [0, 1, 2, 3, 4, 5, 6].map(i => findChild(pageOn(at), "fact" + i)?.value ?? "");
        verify(facts.includes("very dry, noted on the walk"), facts.join("\n"));
    }

    function pods(at, seen, damaged) {
        if (!find(pageOn(at), "podsSeen").visible)
            tap(pageOn(at), "more");
        settle(at);
        type(pageOn(at), "podsSeen", seen);
        settle(at);
        type(pageOn(at), "podsDamaged", damaged);
        settle(at);
    }

    function test_podsAreTypedKeptAndTellTheTiming() {
        const at = walkingIn(false);
        count(at, 1, 2);
        pods(at, "40", "3");
        at.world.restart();
        open(at, "frames", at.walk);
        compare([pageOn(at).model.podsSeen, pageOn(at).model.podsDamaged], [40, 3], "half a frame keeps its pods");
        compare(find(find(pageOn(at), "podsDamaged"), "box").text, "3");
        keepFrame(at);
        compare(fields(at, only(at, "frame"), ["larvae", "pods_seen", "pods_damaged"]), "2 40 3");
        verify(!pageOn(at).model.podsKnown, "the next frame starts without");
        pods(at, "60", "7");
        keepFrame(at);
        open(at, "decide", at.walk);
        tap(pageOn(at), "chip_timing");
        settle(at);
        const said = find(pageOn(at), "timingReasons").sentences.join("\n");
        verify(said.includes("10 % of the pods are damaged"), "10 of 100: " + said);
    }

    function test_podsNotLookedAtAreNotNone() {
        const at = walkingIn(false);
        keepFrame(at);
        compare(fields(at, only(at, "frame"), ["pods_seen", "pods_damaged"]), "undefined undefined");
        open(at, "decide", at.walk);
        tap(pageOn(at), "chip_timing");
        settle(at);
        verify(find(pageOn(at), "timingReasons").sentences.join("\n").includes("Not said: how many pods are damaged."));
    }

    function test_moreDamagedThanSeenIsRefused() {
        const at = walkingIn(false);
        tap(pageOn(at), "more");
        settle(at);
        type(pageOn(at), "podsSeen", "20");
        settle(at);
        type(pageOn(at), "podsDamaged", "30");
        settle(at);
        compare(find(pageOn(at), "podsDamaged").complaint, "It must lie between 0 and 20.");
        verify(!find(pageOn(at), "keep").enabled, "neither 30 nor what was typed on the way to it is kept");
        type(pageOn(at), "podsDamaged", "12");
        settle(at);
        keepFrame(at);
        compare(fields(at, only(at, "frame"), ["pods_seen", "pods_damaged"]), "20 12");
    }

    function test_daysThatNoLabelHasAreNotKept() {
        const at = walkingIn(false);
        keepFrame(at);
        open(at, "decide", at.walk);
        tap(pageOn(at), "chip_timing");
        settle(at);
        type(pageOn(at), "labelDays", "400");
        settle(at);
        verify(!find(pageOn(at), "keep").enabled);
        type(pageOn(at), "labelDays", "21");
        settle(at);
        tap(pageOn(at), "keep");
        tryVerify(() => pageOn(at).model.isKept);
        compare(at.world.fieldOf(only(at, "decision"), "label_days"), 21);
    }
}
