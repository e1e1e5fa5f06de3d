// SPDX-License-Identifier: MIT
// What people type into a set-up that is not as it should be: each gets a sentence, nothing is lost.
import QtQuick
import QtTest

SetupHand {
    id: test

    name: "SetupInput"
    when: windowShown

    function test_aFieldWantsAName_data() {
        return [{ tag: "nothing", typed: "" }, { tag: "blanks", typed: "   " }];
    }

    function test_aFieldWantsAName(row) {
        begin();
        enter("siteName", row.typed);
        stay();
        compare(error("siteName"), "The name is empty. Fill it in.");
        enter("siteName", "Elm");
        compare(error("siteName"), "");
        next("yes");
    }

    function test_anyScriptIsKeptAsTyped_data() {
        return [{ tag: "emoji", text: "Elm 🌾 corner" }, { tag: "right to left", text: "حقل الشمال" },
            { tag: "markup", text: "<b>Elm</b> & 'corner'" }, { tag: "accents", text: "Île-à-la-Crosse" }];
    }

    function test_anyScriptIsKeptAsTyped(row) {
        begin();
        paste("siteName", row.text);
        next("yes");
        paste("landowner", row.text);
        paste("gate", row.text);
        goTo("kept");
        checkFields("site", { name: row.text, gate: row.text });
    }

    function test_aNameTooLongForTheStoreIsSaid() {
        begin();
        paste("siteName", "ن".repeat(200));
        stay();
        verify(error("siteName").startsWith("The name is too long."), error("siteName"));
    }

    function test_tenThousandCharactersOfGate() {
        begin();
        goTo("yes");
        enter("landowner", "Ada");
        paste("gate", "字".repeat(12000));
        next("place");
        goTo("kept");
        compare(world.fieldOf(newest("site"), "gate").length, 10000);
    }

    function test_aGateWithoutAName() {
        begin();
        goTo("yes");
        enter("gate", "Chain");
        stay();
        compare(error("landowner"), "Who said yes? The way in is kept with the name.");
        tap("ownLand");
        compare(findChild(find("landowner"), "box").text, "Wren");
        next("place");
    }

    function test_withoutTheYesItIsSaidAndPossible() {
        begin();
        goTo("yes");
        verify(shown("withoutYes"));
        compare(find("next").text, "Go on without the yes");
        next("place");
        goTo("kept");
        checkFields("site", { landowner: undefined, agreed_day: undefined });
    }

    function test_aYesThatLiesAhead() {
        begin();
        goTo("yes");
        enter("landowner", "Ada");
        enter("agreedDay", "2026-06-04");
        stay();
        compare(error("agreedDay"), "This day lies ahead. A yes was said today or before.");
        enter("agreedDay", "1970-01-01");
        next("place");
    }

    function test_typedCoordinates_data() {
        return [{ tag: "too far north", lat: "99", lon: "-106.6", says: "The latitude must be from -90 to 90." },
            { tag: "too far west", lat: "52.1", lon: "-200", says: "The longitude must be from -180 to 180." },
            { tag: "letters", lat: "north", lon: "-106.6", says: "“north” is not a place." },
            { tag: "one only", lat: "52.1", lon: "", says: "" }, { tag: "degrees", lat: "52.1579", lon: "-106.6702", e7: 521579000 },
            { tag: "comma", lat: "52,1579", lon: "106,6702 W", e7: 521579000 }];
    }

    function test_typedCoordinates(row) {
        begin();
        goTo("place");
        verify(shown("noReceiver"));
        compare(find("next").text, "Go on without a place");
        enter("latitude", row.lat);
        enter("longitude", row.lon);
        compare(find("next").text, "Use these coordinates");
        if (!row.e7) {
            stay();
            verify(error("latitude").length > 10 && error("latitude").startsWith(row.says), error("latitude"));
            compare(findChild(find("latitude"), "box").text, row.lat, "what was typed stays");
            return;
        }
        next("around");
        goTo("kept");
        checkFields("trap", { lat_e7: row.e7, lon_e7: -1066702000, fix_method: "typed", fix_count: undefined,
            accuracy_mm: undefined });
    }

    function test_withoutAPlaceItIsSaid() {
        begin();
        goTo("place");
        for (const page of ["around", "trap", "handling", "lure", "strip", "stake", "last"])
            next(page);
        verify(find("stillOpen").text.startsWith("Still to come: the place."), find("stillOpen").text);
        next("kept");
        checkFields("trap", { lat_e7: undefined, fix_method: undefined, canopy_mm: undefined });
    }

    function test_lettersInANumber() {
        begin();
        goTo("around");
        enter("edge", "two");
        stay();
        verify(error("edge").startsWith("Only a whole number"), error("edge"));
        enter("edge", "60000");
        stay();
        enter("edge", "2");
        verify(!shown("concern"));
        enter("edge", "40");
        verify(/field edge: 40\sm is too far/.test(find("concern").text), find("concern").text);
        next("trap");
        goTo("kept");
        checkFields("trap", { edge_distance_mm: 40000 });
    }

    function test_aLurePastItsDay() {
        begin();
        goTo("lure");
        enter("lureExpiry", "2026-06-02");
        verify(find("expired").text.startsWith("This lure expired a day ago."), find("expired").text);
        enter("lureExpiry", "2026-13-01");
        stay();
        enter("lureExpiry", "2027-06-02");
        verify(!shown("expired"));
        enter("lureLot", "A 17");
        next("strip");
        goTo("kept");
        checkFields("trap", { lure_lot: "A 17", lure_expiry: "2027-06-02" });
    }

    function test_theDayOfSetUp_data() {
        return [{ tag: "ahead", typed: "2026-06-20", title: "The day of set-up lies ahead" },
            { tag: "1970", typed: "1970-01-01", title: "Another year?" }, { tag: "yesterday", typed: "2026-06-02", title: "" }];
    }

    function test_theDayOfSetUp(row) {
        begin();
        goTo("last");
        enter("setDay", row.typed);
        const before = world.changes();
        mouseClick(find("next"));
        if (row.title) {
            const ask = findChild(find("trail").Window.window, "ask");
            tryVerify(() => ask.opened);
            compare(ask.title, row.title);
            compare(world.changes(), before, "asked first");
            mouseClick(findChild(ask.contentItem, "safe"));
            tryVerify(() => !ask.visible);
            compare(at(), "last");
            mouseClick(find("next"));
            tryVerify(() => ask.opened);
            mouseClick(findChild(ask.contentItem, "yes"));
        }
        arrive("kept");
        checkFields("trap", { set_day: row.typed, set_at_ms: undefined });
    }
}
