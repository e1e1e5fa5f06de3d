// SPDX-License-Identifier: MIT
// Setting up a trap as a newcomer does it in the field: by taps and keys, page by page.
import QtQuick
import QtTest

SetupHand {
    id: test

    name: "Setup"
    when: windowShown

    function test_aTrapIsSetUp() {
        begin();
        const before = world.changes();
        goTo("last");
        compare(world.changes(), before, "nothing is kept before the last tap");
        verify(find("next_0").value.startsWith("Monday 8 June"), find("next_0").value);
        compare(find("next_1").value, "about 10 Jun to 17 Jun");
        verify(!shown("stillOpen") && !shown("lateness"));
        next("kept");
        compare(world.changes(), before + 2, "a site and a trap");
        compare(world.draftKeys(), []);
        checkFields("site", { name: "Elm corner", crop: "canola", landowner: "Ada", agreed_day: "2026-06-03",
            district: undefined, gate: undefined });
        checkFields("trap", { site: newest("site"), tag: "1", pest: "bertha-armyworm", trap_type: "green-bucket",
            set_day: "2026-06-03", lat_e7: 521579000, lon_e7: -1066702000, fix_method: "satellite", fix_count: 12,
            cleaned: true, handling_read: true, lure_in: true, strip_in: true, entrance_mm: 1000, canopy_mm: 250,
            height_rule: "follow_canopy", edge_distance_mm: undefined, replaces: undefined, photo: undefined });
        verify(world.fieldOf(newest("trap"), "accuracy_mm") > 0);
        verify(world.fieldOf(newest("trap"), "fix_at_ms") > 0);
        verify(world.fieldOf(newest("trap"), "protocol_version").length > 0);
    }

    function test_aDraftSurvivesAKillOnEachPage_data() {
        return ["yes", "place", "around", "trap", "handling", "lure", "strip", "stake", "last"].map(page => ({ tag: page }));
    }

    function test_aDraftSurvivesAKillOnEachPage(row) {
        begin();
        goTo(row.tag);
        world.restart();
        open("");
        compare(at(), row.tag, "it goes on where it stopped");
        goTo("kept");
        checkFields("site", { name: "Elm corner", landowner: "Ada" });
        checkFields("trap", { lat_e7: 521579000, fix_count: 12, cleaned: true, lure_in: true, strip_in: true,
            handling_read: true, canopy_mm: 250 });
        compare(world.draftKeys(), []);
    }

    function test_lettersTypedJustBeforeAKillAreThere() {
        begin();
        enter("siteName", "Elm corner north");
        world.restart();
        open("");
        compare(findChild(find("siteName"), "box").text, "Elm corner north");
        tap("resumed");
        mouseClick(findChild(find("resumed"), "noticeAction"));
        tryVerify(() => !shown("resumed"));
        tryCompare(findChild(find("siteName"), "box"), "text", "");
        compare(world.draftKeys(), [], "starting over forgets the draft");
    }

    function test_goingBackKeepsWhatWasEntered() {
        begin();
        goTo("stake");
        enter("canopy", "40");
        const pages = ["strip", "lure", "trap", "around", "place", "yes", "field"];
        for (const page of pages)
            goBack(page);
        compare(findChild(find("siteName"), "box").text, "Elm corner");
        next("yes");
        compare(findChild(find("landowner"), "box").text, "Ada");
        next("place");
        compare(find("coordinates").text, "52.15790, -106.67020");
        for (const page of ["around", "trap", "lure", "strip", "stake"])
            next(page); // the reminder was read today
        compare(findChild(find("canopy"), "box").text, "40");
    }

    function test_theStripWaitsForTheLure() {
        begin();
        goTo("lure");
        tap("withoutLure");
        arrive("strip");
        verify(shown("lureFirst") && !shown("withoutStrip"));
        compare(find("next").text, "Go on without the strip");
        mouseClick(bring(findChild(find("lureFirst"), "noticeAction")));
        arrive("lure");
        next("strip");
        verify(!shown("lureFirst"));
        next("stake");
        goBack("strip");
        goBack("lure");
        tap("withoutLure"); // taken out again: the strip is out with it
        arrive("strip");
        next("stake");
        next("last");
        verify(find("stillOpen").text.startsWith("Still to come: the lure and the killing strip."), find("stillOpen").text);
        next("kept");
        checkFields("trap", { lure_in: false, strip_in: false, handling_read: true });
    }

    function test_theReminderIsReadOnceADay() {
        begin();
        goTo("kept");
        tap("another");
        arrive("place");
        for (const page of ["around", "trap", "lure"])
            next(page);
        for (const page of ["strip", "stake", "last", "kept"])
            next(page);
        checkFields("trap", { tag: "2", handling_read: true, site: world.siteIds()[0] });
        compare(world.siteIds().length, 1, "the field is not asked twice");
    }

    function test_theEntranceAgainstTheCrop_data() {
        return [{ tag: "above", canopy: "95", warns: false }, { tag: "level", canopy: "100", warns: true },
            { tag: "below", canopy: "105", warns: true }];
    }

    function test_theEntranceAgainstTheCrop(row) {
        begin();
        goTo("stake");
        enter("canopy", row.canopy);
        compare(shown("tooLow"), row.warns);
        compare(shown("growth"), !row.warns);
        mouseClick(bring(findChild(find("entrance"), "plus")));
        compare(find("stakePicture").entranceMm, 1050);
        compare(shown("tooLow"), row.canopy === "105");
        next("last");
        next("kept");
        checkFields("trap", { entrance_mm: 1050, canopy_mm: Number(row.canopy) * 10 });
    }

    function test_pixelsOfAShapeScrolledAwayDoNotStay() {
        begin();
        goTo("lure");
        bring(find("withoutLure"));
        waitForRendering(page);
        next("strip");
        const head = grabImage(page);
        for (let y = 0; y < 20; ++y)
            compare(String(head.pixel(120, y)), String(head.pixel(300, y)));
    }
}
