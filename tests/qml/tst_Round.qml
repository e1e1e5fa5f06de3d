// SPDX-License-Identifier: MIT
// The day's round as a person goes it: the order, the person's own order, what is done, and who is told.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

SeasonStory {
    id: test

    name: "Round"

    readonly property Walk walk: Walk {}

    // Three traps to be counted: from 49.90 N northwards lie birch, cedar and alder, 1.1 km apart.
    function three() {
        const world = createTemporaryObject(worlds, test, { today: "2026-07-14" });
        const at = { world };
        at.alder = world.addTrap("Alder flats", "bertha 1", "2026-06-04", 49.93, -97.2);
        at.birch = world.addTrap("Birch corner", "bertha 2", "2026-06-04", 49.91, -97.2);
        at.cedar = world.addTrap("Cedar bend", "bertha 3", "2026-06-04", 49.92, -97.2);
        return at;
    }

    function openRound(at, width, height) {
        open(at, "round", "", width, height);
        tryVerify(() => pageOn(at).model.isKnown);
        waitForRendering(at.main.contentItem, 200);
        return pageOn(at);
    }

    // The round from 49.90 N, in its order.
    function standing(width, height) {
        const at = three();
        at.world.standAt(49.90, -97.2, 5);
        openRound(at, width, height);
        tryCompare(pageOn(at).model, "orderLine", "The shortest way found from here.");
        return at;
    }

    // The fields in the order in which they stand, in short.
    function order(at) {
        const names = [];
        for (let i = 0; i < pageOn(at).model.stops.count; ++i)
            names.push(find(pageOn(at), "stop" + i).title.replace(/^[0-9]+\. /, "").split(" ")[0]);
        return names.join(" ");
    }

    function finishWalk(at, trap, verdict, day) {
        const site = at.world.fieldOf(trap, "site");
        const walk = at.world.keepRecord("walk", { site, season: at.world.fieldOf(site, "season"), pest: "bertha-armyworm",
                protocol_version: "2026-1", day, at_ms: Date.parse(day + "T19:00:00Z"), offset_min: 0, frame_cm2: 2500, finished: true });
        at.world.keepRecord("decision", { walk, day, verdict });
        return walk;
    }

    function part(at, key) {
        tap(pageOn(at), "chip_" + key);
        waitForRendering(at.main.contentItem, 200);
    }

    function test_theShortestWayFromHere() {
        const at = standing();
        compare(order(at), "Birch Cedar Alder");
        compare(find(pageOn(at), "pageHead").title, "Three stops today");
        const first = find(pageOn(at), "stop0");
        compare(first.title, "1. Birch corner · bertha 2");
        verify(first.subtitle.startsWith("count overdue, "), first.subtitle);
        compare(first.rightText, "1.1 km ↑");
        compare(find(first, "way").text, "1.1 km to the north.");
        compare(find(find(pageOn(at), "stop1"), "way").text, "1.1 km to the north of the stop before.");
        compare(find(pageOn(at), "lengthLine").text, "About 3.3 km in all, by straight lines. A suggestion: it knows no road, gate or slough.");
    }

    function test_withoutAPositionByName() {
        const at = three();
        openRound(at);
        compare(order(at), "Alder Birch Cedar");
        compare(find(pageOn(at), "orderLine").text, "By name: without a position nobody knows which stop is near.");
        compare(find(pageOn(at), "stop0").rightText, "");
        at.world.standAt(49.90, -97.2, 5);
        tryVerify(() => order(at) === "Birch Cedar Alder", 5000, "with the first fix they come into an order");
    }

    function test_movedByHandItSurvivesAKill() {
        const at = standing();
        tap(pageOn(at), "change");
        tap(find(pageOn(at), "stop2"), "up");
        tryVerify(() => order(at) === "Birch Alder Cedar");
        tap(find(pageOn(at), "stop0"), "down");
        tryVerify(() => order(at) === "Alder Birch Cedar");
        verify(!find(find(pageOn(at), "stop0"), "up").enabled, "the first cannot go earlier");
        compare(find(pageOn(at), "orderLine").text, "Your own order, kept for today.");
        compare(find(find(pageOn(at), "stop0"), "way").text, "3.3 km to the north.", "distances follow the order");
        at.world.flush();
        at.world.restart();
        openRound(at);
        compare(order(at), "Alder Birch Cedar");
        at.world.standAt(49.90, -97.2, 5);
        tap(pageOn(at), "suggestAgain");
        tryVerify(() => order(at) === "Birch Cedar Alder");
        verify(!find(pageOn(at), "suggestAgain").visible);
    }

    function test_movedByKeyboardTheFocusGoesAlong() {
        const at = standing();
        tap(pageOn(at), "change");
        find(find(pageOn(at), "stop0"), "down").forceActiveFocus(Qt.TabFocusReason);
        keyClick(Qt.Key_Space);
        tryVerify(() => order(at) === "Cedar Birch Alder");
        const focused = at.main.activeFocusItem;
        compare(focused.objectName, "down");
        compare(focused.Accessible.name, "2. Birch corner · bertha 2: later");
        keyClick(Qt.Key_Return);
        tryVerify(() => order(at) === "Cedar Alder Birch");
    }

    function test_theOrderOfYesterdayIsOver() {
        const at = three();
        at.world.leaveDraft("round/2026-07-13", JSON.stringify({ order: [at.cedar, at.birch, at.alder] }));
        at.world.flush();
        openRound(at);
        compare(order(at), "Alder Birch Cedar");
        compare(at.world.draftKeys().length, 0);
    }

    function test_infestedFieldsComeLast() {
        const at = three();
        finishWalk(at, at.cedar, "above", "2026-07-12");
        at.world.standAt(49.90, -97.2, 5);
        openRound(at);
        tryVerify(() => order(at) === "Birch Alder Cedar");
        const last = find(pageOn(at), "stop2");
        verify(find(last, "infested").visible);
        verify(last.Accessible.name.includes("infested field"), last.Accessible.name);
        compare(find(pageOn(at), "orderLine").text, "The shortest way found from here, infested fields last.");
        part(at, "order");
        compare(find(pageOn(at), "infestedLast").detail, "One field of this round is infested.");
        verify(find(pageOn(at), "infestedLast").checked, "preset on");
        tap(pageOn(at), "infestedLast");
        part(at, "stops");
        tryVerify(() => order(at) === "Birch Cedar Alder", 5000, "not weighed any more");
    }

    function test_onlyTheLatestWalkCounts() {
        const at = three();
        finishWalk(at, at.cedar, "above", "2026-07-01");
        finishWalk(at, at.cedar, "below", "2026-07-12");
        at.world.standAt(49.90, -97.2, 5);
        openRound(at);
        tryVerify(() => order(at) === "Birch Cedar Alder");
    }

    function test_markedByHand() {
        const at = standing();
        tap(pageOn(at), "change");
        tap(find(pageOn(at), "stop1"), "mark");
        tryVerify(() => order(at) === "Birch Alder Cedar");
        at.world.flush();
        at.world.restart();
        openRound(at);
        tryCompare(pageOn(at).model, "orderLine", "The shortest way found from here, infested fields last.");
        verify(find(find(pageOn(at), "stop2"), "infested").visible);
        tap(pageOn(at), "change");
        tap(find(pageOn(at), "stop2"), "mark");
        tryVerify(() => !find(find(pageOn(at), "stop0"), "infested").visible);
        tryCompare(pageOn(at).model, "infestedLine", "No field of this round is known to be infested.");
    }

    function test_aStopIsTickedOffByVisiting() {
        const at = standing();
        verify(!find(pageOn(at), "doneLabel").visible);
        const round = pageOn(at);
        mouseClick(find(round, "stop0"), 30, 20);
        tryVerify(() => pageOn(at) !== round);
        compare(pageOn(at).subject, at.birch);
        verify(findChild(pageOn(at), "countPage") ?? pageOn(at).model.title !== undefined, "the visit is open");
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
        tap(pageOn(at), "change");
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
        compare(card.subtitle, "a walk to go on with, 1 frame");
        const round = pageOn(at);
        waitForRendering(card, 200);
        mouseClick(card, 30, 20);
        tryVerify(() => pageOn(at) !== round && pageOn(at).model?.walk === walk);
        at.world.keepRecord("walk", { finished: true, day: "2026-07-14" }, walk);
        at.main.back();
        tryVerify(() => round.model.stops.count === 3);
        compare([find(round, "done0").title, find(round, "done0").subtitle], ["Birch corner, larvae", "walked, 1 frame"]);
    }

    function test_theMapIsThePhonesOwn() {
        const at = standing();
        at.world.listenToUrls("geo");
        tap(find(pageOn(at), "stop0"), "map");
        compare(at.world.openedUrls(), ["geo:49.91,-97.2"]);
        verify(!find(pageOn(at), "noMap").visible);
    }

    function test_theMessageIsHandedOver() {
        const at = standing();
        at.world.listenToUrls("sms");
        part(at, "before");
        type(pageOn(at), "backBy", "21:00");
        const message = "Walking the traps of Willow bend; 3 stops; back by 21:00. If I am not, call me or look here: Alder flats · bertha 1, 49.93000, -97.20000";
        compare(find(pageOn(at), "message").text, message);
        tap(pageOn(at), "later");
        tap(pageOn(at), "later");
        tap(pageOn(at), "sooner");
        compare(find(find(pageOn(at), "backBy"), "box").text, "21:30");
        type(pageOn(at), "phone", "+1 204 555-0100");
        tap(pageOn(at), "handOver");
        compare(at.world.openedUrls().length, 1);
        const url = at.world.openedUrls()[0];
        verify(url.startsWith("sms:+12045550100?body="), url);
        compare(decodeURIComponent(url.split("?body=")[1]), message.replace("21:00", "21:30"));
        at.world.flush();
        at.world.restart();
        openRound(at);
        compare([pageOn(at).model.backBy.time, pageOn(at).model.backBy.phone], ["21:30", "+1 204 555-0100"]);
    }

    function test_aTimeThatIsNone() {
        const at = standing();
        part(at, "before");
        type(pageOn(at), "backBy", "soon");
        compare(find(pageOn(at), "backBy").error, "“soon” is not a time of day. Type hours and minutes, such as 18:00.");
        verify(!find(pageOn(at), "message").visible);
        verify(!find(pageOn(at), "handOver").enabled);
        type(pageOn(at), "backBy", "6 pm");
        verify(find(pageOn(at), "message").text.includes("back by 18:00"));
        compare(find(pageOn(at), "gone").text, "That time has gone by today.");
    }

    function test_remindersStandBeforeTheRound() {
        const at = standing();
        verify(!find(pageOn(at), "coolBox").visible, "no lure is to be changed");
        part(at, "before");
        const said = find(pageOn(at), "reminders").sentences.join(" ");
        for (const words of ["muddy", "Boots", "Alone in the heat"])
            verify(said.includes(words), said);
    }

    function test_luresGoInACoolBox() {
        const at = three();
        at.world.addTrap("Dogwood hill", "bertha 4", "2026-05-04", 49.94, -97.2);
        openRound(at);
        compare(find(pageOn(at), "coolBox").text, "One lure is to be changed: take it along closed, in a cool box.");
        part(at, "before");
        verify(find(pageOn(at), "reminders").sentences[0].includes("cool box"));
    }

    function test_theFileOfTheStops() {
        const at = standing();
        tap(pageOn(at), "change");
        tap(find(pageOn(at), "stop2"), "up");
        tryVerify(() => order(at) === "Birch Alder Cedar");
        part(at, "order");
        type(pageOn(at), "folder", at.world.folder());
        tap(pageOn(at), "write");
        tryVerify(() => find(pageOn(at), "written").visible);
        verify(find(pageOn(at), "written").text.includes("duskrow-round-2026-07-14.gpx"));
        const text = at.world.fileText("duskrow-round-2026-07-14.gpx");
        verify(text.includes("<gpx version=\"1.1\""));
        const points = [...text.matchAll(/<rtept lat="([0-9.-]+)" lon="([0-9.-]+)"><name>([^<]+)</g)].map(found => found[3] + " " + Number(found[1]).toFixed(2));
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

    function test_byTheSurveyGrid() {
        const at = three();
        at.world.addTrap("Dogwood hill", "bertha 4", "2026-06-04", 49.94, -97.18);
        at.world.standAt(49.90, -97.2, 5);
        openRound(at);
        tryVerify(() => order(at) === "Birch Cedar Alder Dogwood");
        compare(find(pageOn(at), "stop3").rightText, "1.8 km ↗");
        part(at, "order");
        tap(find(pageOn(at), "metric"), "chip_grid");
        part(at, "stops");
        tryCompare(find(pageOn(at), "stop3"), "rightText", "2.5 km ↗");
        verify(find(pageOn(at), "lengthLine").text.includes("along the lines of the survey"));
    }

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

    function test_everythingFits_data() {
        const rows = [];
        for (const [width, height] of [[360, 640], [390, 844], [1280, 800]]) {
            for (const scale of [1, 2]) {
                for (const light of ["day", "night"]) {
                    for (const page of ["stops", "change", "before", "order"])
                        rows.push({ tag: page + " " + width + "x" + height + " " + scale * 100 + " " + light, page, width, height, scale, light });
                }
            }
        }
        return rows;
    }

    function test_everythingFits(row) {
        const at = three();
        at.world.app.settings.textScale = row.scale;
        at.world.app.settings.light = row.light === "night" ? 2 : 1;
        finishWalk(at, at.cedar, "above", "2026-07-12");
        at.world.addCount(at.world.addTrap("Elm flats by the grain elevator", "bertha 5", "2026-06-04", 49.95, -97.2), "2026-07-14", 7);
        at.world.addTrap("Dogwood hill", "bertha 4", "2026-05-04", 49.94, -97.18);
        at.world.standAt(49.90, -97.2, 5);
        openRound(at, row.width, row.height);
        tryVerify(() => order(at).endsWith("Cedar"));
        if (row.page === "change") {
            tap(pageOn(at), "change");
            tap(find(pageOn(at), "stop1"), "down");
        } else {
            part(at, row.page);
        }
        waitForRendering(at.main.contentItem, 200);
        compare(test.walk.complaints(pageOn(at)).join("\n"), "");
        at.world.app.settings.textScale = 1;
        at.world.app.settings.light = 1;
    }
}
