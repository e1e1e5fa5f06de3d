// SPDX-License-Identifier: MIT
// Stops of the round are opened, ticked off by visiting, shown on the phone's map, written to a file.
import QtQuick
import QtTest

RoundStory {
    id: test

    name: "RoundDone"

    function test_todayLeadsToTheRound() {
        const at = three();
        at.main = at.world.openWindow(390, 844);
        waitForRendering(at.main.contentItem);
        const button = find(at.main.contentItem, "round");
        tryVerify(() => button.visible);
        mouseClick(button);
        tryVerify(() => findChild(at.main.contentItem, "pages").currentItem?.model?.isKnown === true);
        compare(order(at), "Alder Birch Cedar");
        at.main.back();
        at.world.addCount(at.birch, "2026-07-14", 12);
        tryVerify(() => !button.visible, 5000, "two stops need no order");
    }

    function test_aStopIsTickedOffByVisiting() {
        const at = standing();
        verify(!find(pageOn(at), "doneLabel").visible);
        const round = pageOn(at);
        mouseClick(find(round, "stop0"), 30, 20);
        tryVerify(() => pageOn(at) !== round);
        compare(pageOn(at).subject, at.birch);
        at.world.addCount(at.birch, "2026-07-14", 12);
        at.main.back();
        tryVerify(() => pageOn(at) === round && round.model.stops.count === 2);
        compare(order(at), "Cedar Alder");
        compare([find(round, "done0").title, find(round, "done0").subtitle], ["Birch corner · bertha 2", "counted, 12 moths"]);
        at.world.addCount(at.cedar, "2026-07-14", 3);
        at.world.addCount(at.alder, "2026-07-14", 4);
        tryVerify(() => round.model.stops.count === 0);
        compare(find(round, "pageHead").title, "The round is done");
        verify(!find(round, "noStops").visible);
    }

    function test_aDoneStopLeavesAnOrderByHand() {
        const at = standing();
        change(at);
        tap(find(pageOn(at), "stop2"), "up");
        tryVerify(() => order(at) === "Birch Alder Cedar");
        at.world.addCount(at.birch, "2026-07-14", 12);
        tryVerify(() => order(at) === "Alder Cedar");
    }

    function test_aWalkToGoOnWithIsAStop() {
        const at = standing();
        const site = at.world.fieldOf(at.birch, "site");
        const walk = at.world.keepRecord("walk", { site, season: at.world.fieldOf(site, "season"), pest: "bertha-armyworm",
                protocol_version: "2026-1", day: "2026-07-13", at_ms: Date.parse("2026-07-13T19:00:00Z"), offset_min: 0, frame_cm2: 2500 });
        at.world.keepRecord("frame", { walk, day: "2026-07-13", at_ms: Date.parse("2026-07-13T19:05:00Z"), stop: 1, larvae: 4 });
        tryCompare(pageOn(at).model.stops, "count", 4);
        const titles = [0, 1, 2, 3].map(i => find(pageOn(at), "stop" + i).title.replace(/^[0-9]+\. /, ""));
        const which = titles.indexOf("Birch corner, larvae");
        verify(which >= 0, titles.join());
        const card = find(pageOn(at), "stop" + which);
        tryCompare(card, "subtitle", "a walk to go on with, 1 frame");
        const round = pageOn(at);
        waitForRendering(card, 200);
        mouseClick(card, 30, 20);
        tryVerify(() => pageOn(at) !== round && pageOn(at).model?.walk === walk);
        at.world.keepRecord("walk", { finished: true, day: "2026-07-14" }, walk);
        at.main.back();
        tryVerify(() => round.model.stops.count === 3);
        compare([find(round, "done0").title, find(round, "done0").subtitle], ["Birch corner, larvae", "walked, 1 frame"]);
    }

    // The most moths came in the week to 22 June: two weeks later larvae are searched for.
    function test_aFieldToBeScoutedIsAStopUntilItWasWalked() {
        const at = three();
        for (const [day, moths] of [["2026-06-15", 40], ["2026-06-22", 110], ["2026-06-29", 30], ["2026-07-06", 10], ["2026-07-13", 2]])
            at.world.addCount(at.birch, day, moths);
        openRound(at);
        compare(pageOn(at).model.stops.count, 3);
        const card = find(pageOn(at), "stop1");
        compare(card.title, "2. Birch corner, larvae");
        compare([card.route, card.subject], ["walk", at.birch]);
        finishWalk(at, at.birch, "below", "2026-07-14");
        tryCompare(pageOn(at).model.stops, "count", 2);
        compare(find(pageOn(at), "done0").title, "Birch corner, larvae");
    }

    function test_theMapIsThePhonesOwn() {
        const at = standing();
        at.world.listenToUrls("geo");
        tap(find(pageOn(at), "stop0"), "map");
        compare(at.world.openedUrls(), ["geo:49.91,-97.2"]);
        verify(!find(pageOn(at), "noMap").visible);
    }

    function test_theFileOfTheStops() {
        const at = standing();
        change(at);
        tap(find(pageOn(at), "stop2"), "up");
        tryVerify(() => order(at) === "Birch Alder Cedar");
        part(at, "order");
        type(pageOn(at), "folder", at.world.folder());
        tap(pageOn(at), "write");
        tryVerify(() => find(pageOn(at), "written").visible);
        verify(find(pageOn(at), "written").text.includes("duskrow-round-2026-07-14.gpx"));
        const text = at.world.fileText("duskrow-round-2026-07-14.gpx");
        verify(text.includes("<gpx version=\"1.1\""));
        const points = text.split("<rtept ").slice(1).map(point => {
            const found = /^lat="([0-9.-]+)" lon="-97.2000000"><name>([^<]+)</.exec(point);
            return found[2] + " " + Number(found[1]).toFixed(2);
        });
        compare(points, ["Birch corner · bertha 2 49.91", "Alder flats · bertha 1 49.93", "Cedar bend · bertha 3 49.92"]);
        compare(text.split("<wpt ").length - 1, 3);
    }

    function test_aFolderThatIsNotThere() {
        const at = standing();
        part(at, "order");
        type(pageOn(at), "folder", at.world.folder() + "/nowhere");
        tap(pageOn(at), "write");
        tryVerify(() => find(pageOn(at), "fileTrouble").visible);
        verify(!find(pageOn(at), "written").visible);
    }
}
