// SPDX-License-Identifier: MIT
// Before the round: what to think of, and the message to whoever waits. And that all of it fits.
import QtQuick
import QtTest

RoundStory {
    id: test

    name: "RoundBefore"

    readonly property Walk walk: Walk {}

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
            change(at);
            tap(find(pageOn(at), "stop1"), "down");
        } else {
            part(at, row.page);
        }
        waitForRendering(at.main.contentItem, 200);
        compare(test.walk.lasting(pageOn(at), wait).join("\n"), "");
        at.world.app.settings.textScale = 1;
        at.world.app.settings.light = 1;
    }
}
