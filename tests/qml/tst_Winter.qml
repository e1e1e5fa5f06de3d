// SPDX-License-Identifier: MIT
// After the season: what to order follows who goes on, thanks are copied and written as PDFs.
import QtQuick
import QtTest
import Duskrow.Testing

RegionStory {
    id: test

    name: "Winter"

    // Wren kept one trap, which still stands; Tom two; Ada one, which was lost.
    function afterTheSeason(properties) {
        const at = made(Object.assign({ today: "2026-11-20" }, properties));
        const world = at.world;
        const first = world.addTrapOf("Tom Berg", "Slough corner", "bertha 1", "2026-06-03");
        const keeper = world.fieldOf(world.fieldOf(first, "site"), "keeper");
        const lost = world.addTrapOf("Ada", "Elm flats", "bertha 2", "2026-06-03");
        const site = world.fieldOf(first, "site");
        const own = world.keepRecord("trap", { site, season: world.fieldOf(site, "season"), tag: "bertha 3", pest: "bertha-armyworm",
                trap_type: world.fieldOf(first, "trap_type"), set_day: "2026-06-03" });
        for (const [day, moths] of [["2026-06-21", 10], ["2026-07-05", 300], ["2026-07-19", 80], ["2026-08-02", 9]])
            world.addCount(first, day, moths);
        world.addCount(own, "2026-06-21", 4);
        world.addCount(lost, "2026-06-21", 5);
        world.endTrap(first, "2026-08-02");
        world.keepRecord("trap", { end_day: "2026-08-02", end_reason: "season_over" }, own);
        world.keepRecord("trap", { end_day: "2026-07-01", end_reason: "lost" }, lost);
        verify(keeper.length > 0);
        return at;
    }

    function winter(at, width, height) {
        const page = shown(at, "winter", width ?? 1280, height ?? 2000); // high enough for all of it
        tryVerify(() => page.winter.isRead, 10000);
        wait(50);
        return page;
    }

    function row(page, number) {
        let found = null;
        page.list.positionViewAtIndex(number, ListView.Contain);
        tryVerify(() => (found = findChild(page, "cooperator" + number)) !== null);
        wait(50);
        return found;
    }

    function order(page) {
        return find(find(page, "order0"), "lines").text.split("\n");
    }

    function test_whatToOrderFollowsWhoGoesOn() {
        const at = afterTheSeason();
        const page = winter(at);
        compare(page.subtitle, "Season 2026");
        compare(order(page)[0], "Traps: 0 to 4");
        compare(order(page)[1], "Lures: 0 to 4 (1 in a trap; one lasts 56 days, a season 56 days)");
        compare(order(page)[order(page).length - 1], "Lost or replaced this season: 1. Those have to be bought again.");
        compare(find(page, "goingOn").text, "0 go on, 0 do not, 3 have not said.");
        compare(find(row(page, 0), "name").text, "Ada");
        compare(find(row(page, 1), "kept").text, "2 traps · 5 visits");

        tap(find(row(page, 1), "goesOn"), "chip_yes");
        tryVerify(() => order(page)[0] === "Traps: 2 to 4");
        tap(find(row(page, 0), "goesOn"), "chip_no");
        tryVerify(() => order(page)[0] === "Traps: 2 to 3");
        compare(find(page, "goingOn").text, "1 go on, 1 do not, 1 have not said.");
        tap(find(row(page, 0), "goesOn"), "chip_unsaid");
        tryVerify(() => order(page)[0] === "Traps: 2 to 4");
        compare(at.world.recordsOf("next_year").length, 2, "a word of each, changed and not doubled");
        page.list.positionViewAtBeginning();
        tap(page, "copyOrder");
        compare(page.winter.copied, "order");
    }

    function test_whatWasSaidIsThereAfterwards() {
        const at = afterTheSeason();
        tap(find(row(winter(at), 1), "goesOn"), "chip_yes");
        at.world.flush();
        at.main.close();
        at.world.restart();
        const page = winter(at);
        compare(order(page)[0], "Traps: 2 to 4");
        compare(row(page, 1).flags[0], "yes");
    }

    function test_thanksAsAMessage() {
        const at = afterTheSeason();
        const page = winter(at);
        at.world.listenToUrls("mailto");
        tap(row(page, 1), "copyThanks");
        compare(find(row(page, 1), "copyThanks").text, "Copied");
        tap(row(page, 1), "mailThanks");
        compare(at.world.openedUrls().length, 1);
        const words = decodeURIComponent(at.world.openedUrls()[0]);
        verify(words.startsWith("mailto:?subject=Thank you, Tom Berg&body="), words);
        verify(words.includes("In 2026 you kept 2 traps for everybody"), words);
        verify(words.includes("That took 5 visits, from 21 Jun to 2 Aug."), words);
        verify(words.includes("Slough corner · bertha 1: 4 visits, 399 moths"), words);
        verify(words.includes("with a licensed adviser"), words);
    }

    function test_sheetsAreWritten() {
        const at = afterTheSeason();
        const page = winter(at);
        paste(page, "folder", at.world.folder());
        tap(page, "writeSheets");
        tryVerify(() => find(page, "written").visible);
        verify(find(page, "written").text.startsWith("3 sheets are in "), find(page, "written").text);
        for (const name of ["1-ada", "2-tom-berg", "3-wren"])
            verify(at.world.fileText("duskrow-thanks-2026-" + name + ".pdf").startsWith("%PDF"), name);
        paste(page, "folder", at.world.folder() + "/not/there");
        tap(page, "writeSheets");
        verify(!find(page, "written").visible);
        // Who leaves the page at once is told as well.
        keyClick(Qt.Key_Escape);
        compare(find(at.main.contentItem, "pages").depth, 0);
        tryVerify(() => find(at.main.contentItem, "passingTrouble").text.includes("not/there"), 5000);
    }

    function test_beforeThereIsATrap() {
        const page = winter({ world: createTemporaryObject(worlds, test, { today: "2026-11-20" }) });
        verify(find(page, "nothing").visible);
        verify(!find(page, "writeSheets").visible);
    }
}
