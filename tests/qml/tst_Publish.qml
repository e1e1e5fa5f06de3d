// SPDX-License-Identifier: MIT
// A coordinator publishes a week, and it comes back with the reader's own district on top.
import QtQuick
import QtTest

DeskStory {
    id: test

    name: "Publish"

    // Six farms in one district report for the week of 28 June, counted on 29 June; a seventh stands in another.
    function region() {
        const at = made();
        const world = at.world;
        const west = world.keepRecord("district", { name: "West bench" });
        const east = world.keepRecord("district", { name: "East bench" });
        world.keepRecord("site", { district: west }, at.site);
        const moths = [12, 30, 31, 33, 90];
        ["Ann", "Bea", "Cy", "Dot", "Eli"].forEach((who, i) => {
            const trap = world.addTrapOf(who, "Field of " + who, "bertha " + (i + 10), "2026-06-04");
            world.keepRecord("site", { district: west }, world.fieldOf(trap, "site"));
            world.addCount(trap, "2026-06-22", moths[i]);
            world.addCount(trap, "2026-06-29", moths[i] * 2);
            world.addCount(trap, "2026-07-06", moths[i]);
        });
        const far = world.addTrapOf("Fay", "Field of Fay", "bertha 20", "2026-06-04");
        world.keepRecord("site", { district: east }, world.fieldOf(far, "site"));
        at.fars = [world.addCount(far, "2026-06-29", 999), world.addCount(far, "2026-07-06", 998)];
        at.far = far;
        return at;
    }

    // Every word that is seen below an item, in the order of the items.
    function textsUnder(item) {
        let texts = [];
        for (let i = 0; i < item.children.length; ++i) {
            const child = item.children[i];
            if (!child.visible)
                continue;
            if (child.textFormat !== undefined && child.text)
                texts.push(child.text);
            texts = texts.concat(textsUnder(child));
        }
        return texts;
    }

    function publishing(at, width, height) {
        at.main = at.world.openWindow(width ?? 1280, height ?? 800, "publish", "");
        waitForRendering(at.main.contentItem);
        const page = pageOn(at);
        tryVerify(() => page.model.isRead);
        page.model.folder = at.world.folder() + "/out";
        wait(0);
        return page;
    }

    function publish(page) {
        tap(page, "publish");
        wait(0);
        findChild(find(page, "askPublish").contentItem, "yes").clicked();
    }

    function test_aWeekIsPublished() {
        const at = region();
        const page = publishing(at);
        compare(page.model.weekLine, "Week 28 · 6 Jul to 12 Jul");
        compare(page.model.standing, "new");
        verify(page.model.text.length > 50, page.model.text);
        verify(!page.model.isOwnText);
        // What everybody sees: no name, no figure of the one farm in the East.
        const said = textsUnder(find(page, "preview")).join("\n");
        verify(said.includes("West bench"), said);
        verify(said.includes("East bench"), said);
        for (const secret of ["Ann", "Fay", "Field of", "998", "bertha 2"])
            verify(!said.includes(secret), secret + " in " + said);

        // Own words stand in the stead of the draft, and survive leaving.
        type(page, "text", "Look for larvae now.");
        verify(page.model.isOwnText);
        compare(find(page, "previewText").text, "Look for larvae now.");
        at.world.flush();
        at.world.restart();
        const again = publishing(at);
        compare(find(again, "previewText").text, "Look for larvae now.");
        compare(find(find(again, "text"), "box").text, "Look for larvae now.");

        publish(again);
        tryCompare(again.model, "standing", "again");
        tryVerify(() => again.model.written.length > 0);
        tryVerify(() => !find(again, "publish").visible, 5000, "it is out");
        compare(at.world.recordsOf("bulletin").length, 1);
        const bulletin = at.world.recordsOf("bulletin")[0];
        compare(at.world.fieldOf("bulletin", bulletin, "week"), "2026-W28");
        compare(at.world.fieldOf("bulletin", bulletin, "text"), "Look for larvae now.");
        const html = at.world.fileText("out/bulletin-2026-W28.html");
        verify(html.includes("<p>Look for larvae now.</p>"));
        verify(!html.includes("Fay"));
        verify(at.world.fileText("out/feed.atom").includes("2026-W28"));
        compare(at.world.draftKeys().filter(key => key.startsWith("bulletin/")).length, 0, "what was half-written is done");
    }

    function test_lateCountsWaitForANewIssue() {
        const at = region();
        let page = publishing(at);
        publish(page);
        tryCompare(page.model, "standing", "again");
        const before = page.model.areas.count;
        // One count that came late shows nothing of itself.
        at.world.addCount(at.far, "2026-07-08", 500);
        tryVerify(() => page.model.waitingLine.length > 0);
        verify(page.model.canReissue);
        tap(page, "reissue");
        tryCompare(page.model, "standing", "nothing");
        verify(page.model.standingLine.includes("whose they are"), page.model.standingLine);
        compare(page.model.areas.count, before);
        verify(!page.model.canPublish);
    }

    function test_aWeekThatIsNotOver() {
        const at = region();
        const page = publishing(at);
        tap(page, "weekAfter");
        tryCompare(page.model, "standing", "not_over");
        verify(!find(page, "publish").visible);
        verify(!find(page, "preview").visible);
        tap(page, "weekBefore");
        tryCompare(page.model, "standing", "new");
    }

    function test_inFrench() {
        const at = region();
        const page = publishing(at);
        tap(find(page, "language"), "chip_fr");
        verify(page.model.title.includes("semaine 28"), page.model.title);
        compare(find(page, "publish").text, "Publish this week", "the screen keeps its own language");
        tap(find(page, "language"), "chip_en");
        verify(page.model.title.includes("week 28"), page.model.title);
    }

    function test_badBoundaries() {
        const at = region();
        const page = publishing(at);
        page.model.setBoundaries(at.world.folder() + "/nothing.geojson");
        tryVerify(() => page.model.trouble.includes("nothing.geojson"));
        verify(page.model.canPublish, "the map goes without them");
        page.model.setBoundaries(at.world.putFile("words.geojson", "no map at all"));
        tryVerify(() => page.model.trouble.includes("words.geojson is no GeoJSON"), 5000, page.model.trouble);
        page.model.setBoundaries("");
        tryCompare(page.model, "trouble", "");
    }

    // What lies on the desk's map serves the bulletin, as far as it bears a district's name: a field does not.
    function test_boundariesOfTheMap() {
        const at = region();
        const area = (name, west) => '{"type":"Feature","properties":{"name":"%1"},"geometry":{"type":"Polygon","coordinates":[[[%2,51.5],[-100.1,51.5],[-100.1,52.5],[%2,51.5]]]}}'.arg(name).arg(west);
        const file = at.world.putFile("own.geojson", '{"type":"FeatureCollection","features":[%1,%2]}'.arg(area("WEST bench", -107.25)).arg(area("Field of Ann", -104.75)));
        at.main = at.world.openWindow(1280, 800, "map", "");
        waitForRendering(at.main.contentItem);
        const map = pageOn(at);
        tryVerify(() => map.model.isRead);
        tap(map, "openOverlay");
        paste(map, "overlayFile", file);
        tap(map, "addOverlay");
        tryCompare(map.model.overlays, "count", 1);
        const page = publishing(at);
        publish(page);
        tryVerify(() => page.model.written.length > 0);
        const features = at.world.fileText("out/bulletin-2026-W28.geojson");
        verify(features.includes("-107.25"), features);
        verify(!features.includes("-104.75") && !features.includes("Ann"), features);
    }

    // The member's own district comes first, on Today in one line and on its page in full.
    function test_itComesBack() {
        const at = region();
        // With figures of the West and the whole, the one farm of the East would be the difference.
        at.world.endTrap(at.far, "2026-06-05");
        for (const visit of at.fars)
            at.world.keepRecord("visit", { withdrawn: "not hers" }, visit);
        const page = publishing(at);
        publish(page);
        tryCompare(page.model, "standing", "again");
        at.main = at.world.openWindow(390, 844, "", "");
        waitForRendering(at.main.contentItem);
        const card = find(at.main.contentItem, "news");
        tryVerify(() => card.visible);
        compare(card.title, "Bulletin: week 28 of 2026");
        verify(card.subtitle.startsWith("Your district, West bench: 6 of 6 in, median "), card.subtitle);
        tap(at.main.contentItem, "news");
        tryVerify(() => pageOn(at).model.own !== undefined);
        const news = pageOn(at);
        verify(news.model.isFound);
        compare(news.model.own.count, 1);
        const texts = textsUnder(news);
        const own = texts.findIndex(text => text === "West bench");
        verify(own >= 0 && own < texts.findIndex(text => text === "East bench"), texts.join("|"));
        verify(texts.some(text => text.includes("never decides a spray")));
        verify(texts.some(text => text.includes("held back, so that no farm can be told")));
    }
}
