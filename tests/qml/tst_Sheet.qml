// SPDX-License-Identifier: MIT
// The sheet of a walk: read, written as a PDF, copied as text; and a folder that cannot be written.
import QtQuick
import QtTest

LifeStory {
    id: test

    name: "Sheet"

    readonly property Component pasteboard: Component {
        TextEdit {}
    }

    // A walk of six frames with a decision kept, in the only field.
    function walked(larvae) {
        const at = standing();
        at.site = at.world.fieldOf(at.trap, "site");
        at.walk = at.world.keepRecord("walk", { site: at.site, season: at.world.fieldOf(at.site, "season"), pest: "bertha-armyworm",
                protocol_version: "2026-1", day: "2026-07-14", at_ms: 1784000000000, offset_min: 0, stage_bbch: 75, frame_cm2: 2500 });
        (larvae ?? [4, 9, 2, 15, 0, 6]).forEach((count, i) => at.world.keepRecord("frame", { walk: at.walk, day: "2026-07-14",
                at_ms: 1784000000000 + i, stop: i + 1, larvae: count, by_size: "small:0 medium:" + count + " large:0", sick: 1,
                lat_e7: 521000000 + i * 5000, lon_e7: -1066000000 }));
        at.world.keepRecord("decision", { walk: at.walk, day: "2026-07-14", cost: "12", cost_unit: "CAD/ac", price: "10", price_unit: "CAD/bu",
                label_days: 7, cutting_day: "2026-08-20" });
        return at;
    }

    function blocks(page) {
        const all = [];
        for (let i = 0; findChild(page, "block" + i); ++i)
            all.push(findChild(page, "block" + i).text);
        return all.join("\n").replace(/\u2060/g, "");
    }

    function test_theSheetIsReachedFromTheDecision() {
        const at = walked();
        open(at, "decide", at.walk);
        tap(pageOn(at), "sheet");
        tryVerify(() => findChild(pageOn(at), "write"));
        compare(pageOn(at).title, "Slough corner");
        verify(pageOn(at).subtitle.includes("Invented"), "an invented programme says so");
    }

    function test_allOfItIsReadOnTheScreen() {
        const at = walked();
        const page = open(at, "sheet", at.walk);
        compare(find(page, "verdict").verdict, "too_close");
        const said = blocks(page);
        for (const wanted of ["Frame 4, Stop 4, Small 0, Medium 15, Large 0, Larvae 15, Sick 1", "All, Small 0, Medium 36",
                "12 CAD/ac ÷ 0.58 CAD/ac", "A trap catch never decides a spray.", "Nothing was decided yet.", "version 2026-1"])
            verify(said.includes(wanted), wanted + "\n" + said);
        compare(find(page, "fact1").value, "Wren", "who kept the walk");
    }

    function test_thePdfIsWrittenWhereItSays() {
        const at = walked();
        const page = open(at, "sheet", at.walk);
        type(page, "folder", at.world.folder());
        tap(page, "write");
        tryVerify(() => find(page, "written").visible);
        verify(find(page, "written").text.includes(at.world.folder() + "/duskrow-2026-07-14-slough-corner.pdf"), find(page, "written").text);
        verify(at.world.fileText("duskrow-2026-07-14-slough-corner.pdf").startsWith("%PDF-1."));
    }

    function test_aFolderThatCannotBeWrittenSaysSo_data() {
        return [{ tag: "not there", folder: "/nowhere" }, { tag: "a file", folder: "/programme.duskrow" }];
    }

    function test_aFolderThatCannotBeWrittenSaysSo(row) {
        const at = walked();
        const page = open(at, "sheet", at.walk);
        type(page, "folder", at.world.folder() + row.folder);
        tap(page, "write");
        tryVerify(() => find(page, "trouble").visible);
        verify(find(page, "trouble").text.includes("cannot be written"), find(page, "trouble").text);
        verify(!find(page, "written").visible);
        type(page, "folder", at.world.folder());
        verify(!find(page, "trouble").visible, "typing another folder takes the complaint away");
        tap(page, "write");
        tryVerify(() => find(page, "written").visible);
    }

    function test_noFolderAtAllIsAskedFor() {
        const at = walked();
        const page = open(at, "sheet", at.walk);
        page.model.folder = "";
        tap(page, "write");
        verify(find(page, "trouble").visible);
    }

    function test_theTextGoesToTheClipboard() {
        const at = walked();
        const page = open(at, "sheet", at.walk);
        tap(page, "copy");
        compare(find(page, "copy").text, "Copied");
        const board = createTemporaryObject(pasteboard, test);
        board.paste();
        for (const wanted of ["Scouting walk", "Slough corner", "Too close to call", "A trap catch never decides a spray.", "20.7 larvae/m²"])
            verify(board.text.includes(wanted), wanted + "\n" + board.text);
    }

    function test_theTextIsHandedOver_data() {
        return [{ tag: "mail", scheme: "mailto", begins: "mailto:?subject=Slough%20corner&body=Scouting%20walk" },
            { tag: "message", scheme: "sms", begins: "sms:?body=Scouting%20walk" }];
    }

    function test_theTextIsHandedOver(row) {
        const at = walked();
        at.world.listenToUrls(row.scheme);
        const page = open(at, "sheet", at.walk);
        tap(page, row.tag);
        compare(at.world.openedUrls().length, 1);
        const url = at.world.openedUrls()[0];
        verify(url.startsWith(row.begins), url);
        const body = url.split("body=")[1];
        verify(decodeURIComponent(body).includes("A trap catch never decides a spray."));
        verify(!body.includes("&"), "nothing of the text is taken for more of the address");
        verify(!find(page, "nobodyTakesIt").visible);
    }

    function test_aWalkThatIsNotThereSaysSo() {
        const at = standing();
        const page = open(at, "sheet", at.trap);
        verify(find(page, "trouble").visible);
        verify(!find(page, "write").visible);
    }

    function test_everythingFits_data() {
        const rows = [];
        for (const [width, height] of [[360, 640], [390, 844], [1280, 800]])
            for (const scale of [1, 2])
                for (const light of ["day", "night"])
                    rows.push({ tag: width + "x" + height + " " + scale * 100 + " " + light, width, height, scale, light });
        return rows;
    }

    function test_everythingFits(row) {
        const at = walked();
        at.world.app.settings.textScale = row.scale;
        at.world.app.settings.light = row.light === "night" ? 2 : 1;
        const page = open(at, "sheet", at.walk, row.width, row.height);
        compare(test.walk.lasting(page, wait).join("\n"), "");
        at.world.app.settings.textScale = 1;
        at.world.app.settings.light = 1;
    }
}
