// SPDX-License-Identifier: MIT
// A sample on its way: each step one tap, and what it does to the count.
import QtQuick
import QtTest

VisitStory {
    id: test

    name: "Samples"

    // A visit with 4 moths and 2 nobody was sure of.
    function keepSample(): string {
        begin();
        visit().count.type(4);
        visit().count.bin = "unsure";
        visit().count.add(2);
        return goThrough();
    }

    function openSample() {
        open("samples", trap);
        tryVerify(() => findChild(step(), "sample_0"));
        settle();
        mouseClick(find("sample_0"));
        inSheet("sampleSheet", "sampleTitle");
    }

    function tapStep(name: string, state: string) {
        settle();
        mouseClick(inSheet("sampleSheet", name));
        tryCompare(visit(), "state", state);
        settle();
    }

    function typeIn(owner: string, text: string) {
        const box = findChild(inSheet("sampleSheet", owner), "box");
        mouseClick(box);
        box.selectAll();
        for (const c of text)
            keyClick(c);
    }

    function soFar(): string {
        open("visit", trap);
        return find("number").lines[0];
    }

    function test_fromKeptToNamed() {
        const counted = keepSample();
        compare(soFar(), "216 so far");
        openSample();
        const sample = world.recordsOf("sample")[0];
        typeIn("sentTo", "the museum");
        tapStep("send", "sent");
        tapStep("receive", "received");
        typeIn("namedBy", "Ada");
        mouseClick(findChild(inSheet("sampleSheet", "samplePest"), "minus"));
        compare(inSheet("sampleSheet", "nameIt").text, "Named today: 1 the pest");
        tapStep("nameIt", "named");
        const fields = ["state", "kept_day", "sent_day", "received_day", "named_day", "sent_to", "named_by", "named_as", "pest"];
        const day = "2026-07-14";
        compare(fields.map(field => kept(sample, field)), ["named", day, day, day, day, "the museum", "Ada", "bertha armyworm", 1]);
        compare(kept(counted, "pest"), 4, "the count as it was made stays");
        compare(world.changesOf(counted), 1);
        compare(soFar(), "217 so far", "and the season holds the named moth");
        open("samples", trap);
        tryVerify(() => findChild(step(), "sample_0"));
        compare(find("sample_0").subtitle, "Slough corner · bertha trap 1\n1 of 2 the pest · bertha armyworm");
    }

    function test_aStepTakenBack() {
        keepSample();
        openSample();
        const sample = world.recordsOf("sample")[0];
        tapStep("send", "sent");
        tapStep("stepBack", "kept");
        compare([kept(sample, "state"), kept(sample, "sent_day")], ["kept", undefined]);
        verify(world.changesOf(sample) === 3, "both steps stay in the history");
    }

    function test_itsHistoryIsATapAway() {
        keepSample();
        openSample();
        settle();
        mouseClick(inSheet("sampleSheet", "history"));
        tryVerify(() => findChild(page, "pages").currentItem.subject === "sample/" + world.recordsOf("sample")[0]);
        verify(find("correct").visible);
    }

    function test_moreThanThereAreIsRefused() {
        keepSample();
        openSample();
        tapStep("send", "sent");
        visit().nameAs("bertha armyworm", "", 3);
        verify(inSheet("sampleSheet", "sampleTrouble").text.length > 0);
        compare(kept(world.recordsOf("sample")[0], "state"), "sent");
    }

    function test_noSamplesYet() {
        begin();
        open("samples", "");
        tryVerify(() => find("noSamples").visible);
    }

    function test_theNextBagHasTheNextNumber() {
        keepSample();
        open("visit", trap);
        visit().count.bin = "unsure";
        visit().count.add(1);
        compare(visit().done.sampleNumber, "bertha trap 1-2");
        visit().done.sampleNumber = "bertha trap 1-1";
        verify(visit().done.sampleError.includes("bears this number"));
    }
}
