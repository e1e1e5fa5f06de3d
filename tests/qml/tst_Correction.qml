// SPDX-License-Identifier: MIT
// Single fields of any record are set right: what is typed, what is refused, what is kept, and what is left alone.
import QtQuick
import QtTest

LifeStory {
    name: "Correction"

    // An entry of the page, e.g. "tag".
    function entry(at, field) {
        return find(pageOn(at), "entry_" + field);
    }

    function write(at, field, words) {
        type(pageOn(at), "entry_" + field, words);
    }

    function keepIt(at) {
        const page = pageOn(at);
        tap(page, "keep");
        tryVerify(() => pageOn(at) !== page, 5000, "kept, and back where it came from");
        waitForRendering(pageOn(at), 500);
    }

    function fromTheLife(at, button) {
        open(at, "life");
        tap(pageOn(at), button);
        waitForRendering(pageOn(at), 500);
    }

    function test_aFactIsCorrectedAndNothingElseIsTouched() {
        const at = standing();
        at.world.keepRecord("trap", { entrance_mm: 1003, lure_lot: " K 1 " }, at.trap);
        fromTheLife(at, "correct");
        compare(find(entry(at, "entrance_mm"), "box").text, "100");
        verify(!find(pageOn(at), "keep").enabled, "nothing is corrected yet");
        write(at, "tag", "bertha 7");
        write(at, "canopy_mm", "35");
        write(at, "edge_distance_mm", "2.5");
        keepIt(at);
        compare(fields(at, at.trap, ["tag", "canopy_mm", "entrance_mm", "edge_distance_mm"]), "bertha 7 350 1003 2500");
        compare(at.world.fieldOf(at.trap, "lure_lot"), " K 1 ");
        const history = open(at, "history", "trap/" + at.trap);
        const line = find(history, "change0").flags.join("; ");
        verify(line.startsWith("The tag: “bertha 1” → “bertha 7”; The height of the canopy: 30 cm → 35 cm; The distance to the field edge: "), line);
        compare(find(history, "change0").flags.length, 3);
    }

    function test_theFieldIsCorrected() {
        const at = standing();
        fromTheLife(at, "correctSite");
        const site = at.world.fieldOf(at.trap, "site");
        write(at, "name", "Slough corner, north half");
        write(at, "landowner", "Ida of the long road");
        write(at, "agreed_day", "2026-05-20");
        write(at, "gate", "north gate, close it");
        keepIt(at);
        compare(fields(at, site, ["name", "landowner", "agreed_day", "gate", "crop"]),
                "Slough corner, north half Ida of the long road 2026-05-20 north gate, close it canola");
        verify(find(pageOn(at), "pageHead").title.startsWith("Slough corner, north half"), "and is called so at once");
    }

    function test_aSampleIsCorrectedFromItsHistory() {
        const at = standing();
        const visit = at.world.addCount(at.trap, "2026-07-13", 5);
        const sample = at.world.keepRecord("sample", { trap: at.trap, visit, number: "B1-3", moths: 3, state: "sent" });
        open(at, "history", "sample/" + sample);
        tap(pageOn(at), "correct");
        waitForRendering(pageOn(at), 500);
        compare(find(pageOn(at), "pageHead").title, "Correct the sample");
        write(at, "number", "B1-4");
        write(at, "moths", "13");
        tap(entry(at, "state"), "chip_kept");
        keepIt(at);
        compare(fields(at, sample, ["number", "moths", "state", "visit"]), "B1-4 13 kept " + visit);
        verify(find(pageOn(at), "change0").flags.includes("The number in the sample: 3 moths → 13 moths"));
    }

    function test_aPlaceThatWasTypedWasNotFoundBySatellite() {
        const at = standing();
        at.world.keepRecord("trap", { fix_method: "satellite", accuracy_mm: 4000 }, at.trap);
        fromTheLife(at, "correct");
        write(at, "lat_e7", "52.12345");
        keepIt(at);
        compare(fields(at, at.trap, ["lat_e7", "lon_e7", "fix_method", "accuracy_mm"]), "521234500 -1066000000 typed undefined");
    }

    function test_sayingThatNobodyKnows() {
        const at = standing();
        at.world.keepRecord("trap", { cleaned: true }, at.trap);
        fromTheLife(at, "correct");
        tap(entry(at, "cleaned"), "chip_");
        tap(entry(at, "lure_in"), "chip_no");
        keepIt(at);
        compare(fields(at, at.trap, ["cleaned", "lure_in"]), "undefined false");
    }

    function test_badInput_data() {
        return [
                    { tag: "letters", field: "canopy_mm", typed: "tall" },
                    { tag: "less than nothing", field: "canopy_mm", typed: "-5" },
                    { tag: "more than any stake", field: "entrance_mm", typed: "1000000000" },
                    { tag: "off the globe", field: "lat_e7", typed: "91" },
                    { tag: "no day", field: "set_day", typed: "2026-02-30" }
                ];
    }

    function test_badInput(row) {
        const at = standing();
        const before = at.world.changesOf(at.trap);
        fromTheLife(at, "correct");
        write(at, "tag", "bertha 9");
        write(at, row.field, row.typed);
        compare(entry(at, row.field).valid, false);
        tap(pageOn(at), "keep");
        verify(pageOn(at).model, "the page stays");
        compare(find(pageOn(at), "pageHead").title, "Correct the trap");
        verify(find(entry(at, row.field), "error").visible, "it is said what is wrong");
        at.world.flush();
        compare(at.world.changesOf(at.trap), before, "and nothing is kept");
    }

    function test_anEmptyNameIsRefused() {
        const at = standing();
        fromTheLife(at, "correctSite");
        const box = find(entry(at, "name"), "box");
        box.forceActiveFocus();
        box.selectAll();
        keyClick(Qt.Key_Backspace);
        tap(pageOn(at), "keep");
        verify(find(pageOn(at), "trouble").visible);
        compare(at.world.fieldOf(at.world.fieldOf(at.trap, "site"), "name"), "Slough corner");
    }

    function test_halfACorrectionSurvivesACrash() {
        const at = standing();
        fromTheLife(at, "correct");
        write(at, "tag", "bertha 7");
        write(at, "canopy_mm", "35");
        at.world.restart();
        fromTheLife(at, "correct");
        compare(find(entry(at, "tag"), "box").text, "bertha 7");
        compare(find(entry(at, "canopy_mm"), "box").text, "35");
        compare(at.world.fieldOf(at.trap, "tag"), "bertha 1", "not kept yet");
        keepIt(at);
        compare(fields(at, at.trap, ["tag", "canopy_mm"]), "bertha 7 350");
        compare(at.world.draftKeys().length, 0);
    }

    function test_leavingItMeansLeavingIt() {
        const at = standing();
        fromTheLife(at, "correct");
        write(at, "tag", "bertha 7");
        tap(pageOn(at), "back");
        compare(at.world.draftKeys().length, 0);
        fromTheLife(at, "correct");
        compare(find(entry(at, "tag"), "box").text, "bertha 1");
    }

    function test_everythingFits_data() {
        const rows = [];
        for (const [width, height] of [[360, 640], [390, 844], [1280, 800]]) {
            for (const scale of [1, 2]) {
                for (const kind of ["trap", "site"])
                    rows.push({ tag: kind + " " + width + " wide, " + scale * 100 + " %", width, height, scale, kind });
            }
        }
        return rows;
    }

    function test_everythingFits(row) {
        const at = standing();
        at.world.app.settings.textScale = row.scale;
        const id = row.kind === "trap" ? at.trap : at.world.fieldOf(at.trap, "site");
        open(at, "correct", row.kind + "/" + id, row.width, row.height);
        compare(walk.lasting(pageOn(at), wait).join("\n"), "");
        at.world.app.settings.textScale = 1;
    }
}
