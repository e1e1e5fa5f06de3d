// SPDX-License-Identifier: MIT
// The map of a region, by touch, wheel and keys; overlays from files of strangers; the picture that is saved.
import QtQuick
import QtTest

RegionStory {
    id: test

    name: "RegionMap"

    readonly property string districts: '{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"name":"East bench"},"geometry":{"type":"Polygon","coordinates":[[[-106.3,51.5],[-105.7,51.5],[-105.7,52.5],[-106.3,51.5]]]}}]}'

    function map(at, width, height) {
        const page = shown(at, "map", width, height);
        tryVerify(() => page.model.isRead && !page.model.isWorking);
        wait(50); // the panel beside it finds its height
        return page;
    }

    function item(page) {
        return find(page, "map");
    }

    function test_aTouchNamesATrap() {
        const at = region();
        const page = map(at);
        compare(page.model.standing, "25 of 25 traps counted for this week");
        verify(find(page, "nothingChosen").visible);
        for (let i = 0; i < 30 && page.model.trap !== at.traps[23]; ++i)
            page.model.chooseNext(1);
        const spot = item(page).placeOfChosen();
        page.model.chooseNone();
        mouseClick(item(page), spot.x + 6, spot.y - 5);
        compare(find(page, "trapTitle").text, "Field 24 · bertha 33");
        compare(page.model.trap, at.traps[23]);
        verify(find(page, "trapBand").visible);
        compare(page.model.band, 3, "910 moths");
        mouseClick(item(page), 3, item(page).height / 2);
        compare(page.model.trap, "", "a touch beside lets go");
        mouseClick(item(page), spot.x, spot.y);
        tap(page, "openSeason");
        tryVerify(() => pageOn(at) !== page);
        compare(find(pageOn(at), "pageHead").title.length > 0, true);
    }

    function test_dragWheelAndButtons() {
        const at = region();
        const page = map(at);
        page.model.chooseNext(1);
        const view = item(page);
        const before = view.placeOfChosen();
        const scale = view.metresPerPixel;
        const x = view.width / 2;
        const y = view.height / 2;
        mousePress(view, x, y);
        for (let i = 1; i <= 10; ++i)
            mouseMove(view, x - 12 * i, y + 7 * i, 10);
        mouseRelease(view, x - 120, y + 70);
        const after = view.placeOfChosen();
        verify(Math.abs(after.x - before.x + 120) < 25 && Math.abs(after.y - before.y - 70) < 20, "as far as the finger, less what begins a drag: " + (after.x - before.x) + " " + (after.y - before.y));
        mouseWheel(view, after.x, after.y, 0, 240);
        verify(Math.abs(scale / view.metresPerPixel - 1.44) < 0.01, "two notches");
        verify(Math.abs(view.placeOfChosen().x - after.x) < 1, "what lies under the wheel stays");
        tap(page, "farther");
        tap(page, "farther");
        verify(view.metresPerPixel > scale);
        tap(page, "wholeRegion");
        verify(Math.abs(view.metresPerPixel - scale) < 1e-6);
        verify(Math.abs(view.placeOfChosen().x - before.x) < 1);
    }

    function test_theKeyboardAlone() {
        const at = region();
        const page = map(at);
        const view = item(page);
        tryVerify(() => view.activeFocus);
        const scale = view.metresPerPixel;
        keyClick("+");
        verify(view.metresPerPixel < scale);
        keyClick("n");
        compare(page.model.trap, at.traps[23], "the highest first");
        const spot = view.placeOfChosen();
        verify(spot.x > 0 && spot.x < view.width && spot.y > 0 && spot.y < view.height, "and it is seen");
        keyClick(Qt.Key_Left);
        compare(Math.round(view.placeOfChosen().x - spot.x), 80);
        keyClick(Qt.Key_Up);
        compare(Math.round(view.placeOfChosen().y - spot.y), 80);
        keyClick("0");
        verify(Math.abs(view.metresPerPixel - scale) < 1e-6);
        keyClick("p");
        keyClick("n");
        compare(page.model.trap, at.traps[23]);
        const week = page.model.week;
        keyClick("[");
        compare(page.model.week, week - 1);
        tryVerify(() => !page.model.isWorking);
        keyClick("]");
        compare(page.model.week, week);
        keyClick(Qt.Key_Return);
        tryVerify(() => pageOn(at) !== page);
        keyClick(Qt.Key_Escape);
        tryVerify(() => pageOn(at) === page);
        keyClick(Qt.Key_Escape);
        compare(page.model.trap, "", "lets go first");
        keyClick(Qt.Key_Escape);
        compare(find(at.main.contentItem, "pages").depth, 0);
    }

    function test_weeksGoBack() {
        const at = region();
        const page = map(at);
        keyClick("n");
        compare(page.model.weekLine, "6 Jul to 12 Jul");
        compare(page.model.band, 3);
        find(page, "weeks").forceActiveFocus();
        keyClick(Qt.Key_Left);
        tryVerify(() => !page.model.isWorking);
        compare(page.model.weekLine, "29 Jun to 5 Jul");
        compare(page.model.band, 2, "425 moths by then");
        compare(page.model.standing, "24 of 25 traps counted for this week");
        keyClick(Qt.Key_Left);
        tryVerify(() => !page.model.isWorking);
        compare(page.model.band, 0, "nobody had counted yet");
        compare(page.model.standing, "0 of 25 traps counted for this week");
    }

    function test_chancesBetweenTheTraps() {
        const at = region();
        const page = map(at);
        verify(page.model.surfaceLine.includes("better than the mean of all"), page.model.surfaceLine);
        compare(page.model.edge, "300", "the first edge, where a surface may be drawn");
        const before = page.model.revision;
        tap(find(page, "edges"), "chip_900");
        compare(page.model.edge, "900");
        tap(find(page, "edges"), "chip_none");
        compare(page.model.edge, "none");
        verify(page.model.revision > before, "and the map is drawn anew");
    }

    function test_tooFewTrapsStandAlone() {
        const at = season();
        const page = map(at);
        compare(page.model.edge, "none");
        verify(page.model.surfaceLine.startsWith("Traps alone: "), page.model.surfaceLine);
        verify(page.model.surfaceLine.includes("fewer than the 20"));
    }

    function test_boundariesOfAFile() {
        const at = region();
        const file = at.world.putFile("districts.geojson", test.districts);
        const page = map(at);
        tap(page, "openOverlay");
        paste(page, "overlayFile", file);
        tap(page, "addOverlay");
        tryCompare(page.model.overlays, "count", 1);
        compare(find(find(page, "overlay0"), "besides").text, "Areas: 1, lines: 0");
        at.world.restart();
        const again = map(at);
        tryCompare(again.model.overlays, "count", 1);
        tap(find(again, "overlay0"), "dropOverlay");
        compare(again.model.overlays.count, 0);
        at.world.restart();
        const last = map(at);
        wait(100);
        compare(last.model.overlays.count, 0);
    }

    function test_hostileFilesAreRefusedWithASentence_data() {
        return [
            { tag: "no JSON", text: "PK\u0003\u0004 not at all", says: "is no GeoJSON" },
            { tag: "cut", text: test.districts.slice(0, 150), says: "is no GeoJSON" },
            { tag: "deep", text: "[".repeat(100000), says: "is no GeoJSON" },
            { tag: "beyond the earth", text: test.districts.replace("-106.3", "-1e300"), says: "is no GeoJSON" },
            { tag: "huge", text: " ".repeat(16 * 1024 * 1024 + 1), says: "larger than 16 MB" }
        ];
    }

    function test_hostileFilesAreRefusedWithASentence(row) {
        const at = region();
        const file = at.world.putFile("hostile.geojson", row.text);
        const page = map(at);
        page.model.addOverlay(file);
        tryVerify(() => page.model.overlayTrouble.includes(row.says), 5000, page.model.overlayTrouble);
        compare(page.model.overlays.count, 0);
        tap(page, "openOverlay");
        verify(find(page, "overlayTrouble").visible);
    }

    function test_aFileThatIsGoneIsSaid() {
        const at = region();
        const page = map(at);
        page.model.addOverlay(at.world.folder() + "/nowhere.geojson");
        tryVerify(() => page.model.overlayTrouble.includes("nowhere.geojson"));
    }

    function test_theMapAsAFile() {
        const at = region();
        const page = map(at);
        find(page, "openSave").forceActiveFocus();
        keyClick(Qt.Key_Space);
        paste(page, "saveFolder", at.world.folder());
        find(page, "writeMap").forceActiveFocus();
        keyClick(Qt.Key_Space);
        tryVerify(() => find(page, "written").visible, 2000, page.model.trouble);
        const svg = at.world.fileText("duskrow-map-2026-07-06.svg");
        verify(svg.includes("<svg") && svg.includes("nobody counted it this week") && svg.includes("km"));
        compare(page.model.trouble, "");
        page.model.write(item(page).sheet(), at.world.folder() + "/no such folder");
        verify(page.model.trouble.length > 0);
    }
}
