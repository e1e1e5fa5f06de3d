// SPDX-License-Identifier: MIT
// The day's round as a person goes it: the order, the person's own order, infested fields.
import QtQuick
import QtTest

RoundStory {
    id: test

    name: "Round"

    function test_theShortestWayFromHere() {
        const at = standing();
        compare(order(at), "Birch Cedar Alder");
        compare(find(pageOn(at), "pageHead").title, "Three stops today");
        const first = find(pageOn(at), "stop0");
        compare(first.title, "1. Birch corner · bertha 2");
        verify(first.subtitle.startsWith("count overdue, "), first.subtitle);
        compare(way(at, 0), "1.1 km to the north.");
        compare(way(at, 1), "1.1 km to the north of the stop before.");
        compare(find(pageOn(at), "lengthLine").text, "About 3.3 km in all, by straight lines. A suggestion: it knows no road, gate or slough.");
    }

    function test_withoutAPositionByName() {
        const at = three();
        openRound(at);
        compare(order(at), "Alder Birch Cedar");
        compare(find(pageOn(at), "orderLine").text, "By name: without a position nobody knows which stop is near.");
        verify(!find(find(pageOn(at), "stop0"), "way").visible);
        compare(way(at, 1), "2.2 km to the south of the stop before.");
        at.world.standAt(49.90, -97.2, 5);
        tryVerify(() => order(at) === "Birch Cedar Alder", 5000, "with the first fix they come into an order");
    }

    function test_movedByHandItSurvivesAKill() {
        const at = standing();
        change(at);
        tap(find(pageOn(at), "stop2"), "up");
        tryVerify(() => order(at) === "Birch Alder Cedar");
        tap(find(pageOn(at), "stop0"), "down");
        tryVerify(() => order(at) === "Alder Birch Cedar");
        verify(!find(find(pageOn(at), "stop0"), "up").enabled, "the first cannot go earlier");
        compare(find(pageOn(at), "orderLine").text, "Your own order, kept for today.");
        compare(way(at, 0), "3.3 km to the north.", "distances follow the order");
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
        change(at);
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
        change(at);
        tap(find(pageOn(at), "stop1"), "mark");
        tryVerify(() => order(at) === "Birch Alder Cedar");
        at.world.flush();
        at.world.restart();
        openRound(at);
        tryCompare(pageOn(at).model, "orderLine", "The shortest way found from here, infested fields last.");
        verify(find(find(pageOn(at), "stop2"), "infested").visible);
        change(at);
        tap(find(pageOn(at), "stop2"), "mark");
        tryVerify(() => !find(find(pageOn(at), "stop0"), "infested").visible);
        tryCompare(pageOn(at).model, "infestedLine", "No field of this round is known to be infested.");
    }

    function test_byTheSurveyGrid() {
        const at = three();
        at.world.addTrap("Dogwood hill", "bertha 4", "2026-06-04", 49.94, -97.18);
        at.world.standAt(49.90, -97.2, 5);
        openRound(at);
        tryVerify(() => order(at) === "Birch Cedar Alder Dogwood");
        compare(way(at, 3), "1.8 km to the north-east of the stop before.");
        part(at, "order");
        tap(find(pageOn(at), "metric"), "chip_grid");
        part(at, "stops");
        tryVerify(() => way(at, 3) === "2.5 km to the north-east of the stop before.");
        verify(find(pageOn(at), "lengthLine").text.includes("along the lines of the survey"));
    }
}
