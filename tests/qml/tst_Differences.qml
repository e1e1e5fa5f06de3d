// SPDX-License-Identifier: MIT
// What a coordinator decides, by taps and keys: differences, proposals, what was kept aside.
import QtQuick
import QtTest
import Duskrow.Testing

ExchangeStory {
    id: test

    name: "Differences"

    // Two who had not seen each other's entry gave different counts of one visit.
    function differing() {
        const at = made();
        at.ida = at.world.joinAnother("Ida", "coordinator", "phone");
        at.ida.change("visit", at.visit, noSite, { pest: 49 });
        at.world.keepRecord("visit", { pest: 52 }, at.visit);
        at.ida.exchange(at.world.sharedFolder());
        at.world.exchange();
        return at;
    }

    function questions(at) {
        const page = show(at, "differences");
        tryVerify(() => page.model.isRead);
        return page;
    }

    function test_theNavigationSaysHowManyWait() {
        const at = differing();
        show(at);
        tryCompare(at.world.app, "questions", 1);
        const tab = find(at.main.contentItem, "tab_year");
        compare(tab.mark, "1");
        compare(tab.Accessible.name, "Year, 1 to decide");
    }

    function test_bothValuesStandAndOneIsChosen() {
        const at = differing();
        compare(at.world.fieldOf("visit", at.visit, "pest"), 52, "the highest is drawn until then");
        const page = questions(at);
        compare(page.model.differences.count, 1);
        const card = find(page, "difference0");
        compare(card.words, ["49 moths", "52 moths"].sort((a, b) => card.words.indexOf(a) - card.words.indexOf(b)));
        verify(card.besides.some(who => who.startsWith("Ida, ")) && card.besides.some(who => who.startsWith("Wren, ")), card.besides.join("; "));
        verify(!find(page, "settle").enabled);
        tap(card, "choice" + card.words.indexOf("49 moths"));
        compare(find(page, "settle").text, "Settle it");
        tap(page, "settle");
        tryCompare(page.model.differences, "count", 0);
        tryVerify(() => find(page, "nothing").visible);
        at.world.exchange();
        at.ida.exchange(at.world.sharedFolder());
        compare(at.ida.fieldOf("visit", at.visit, "pest"), 49, "and everybody sees the outcome");
        tryCompare(at.world.app, "questions", 0);
    }

    function test_midgesAreNoMoths() {
        const at = differing();
        const trap = at.world.fieldOf("visit", at.visit, "trap");
        at.world.keepRecord("protocol_use", { season: at.world.fieldOf("trap", trap, "season"), pest: "wheat-midge", version: "2026-1" });
        at.world.keepRecord("trap", { pest: "wheat-midge" }, trap);
        const page = questions(at);
        compare(Array.from(find(page, "difference0").words).sort(), ["49 midges", "52 midges"]);
    }

    function test_aThirdValueIsTyped() {
        const at = differing();
        const page = questions(at);
        const card = find(page, "difference0");
        type(card, "third", "many");
        tap(page, "settle");
        tryVerify(() => find(page, "trouble").visible);
        compare(page.model.differences.count, 1);
        type(find(page, "difference0"), "third", "50");
        tap(page, "settle");
        tryCompare(page.model.differences, "count", 0);
        at.world.exchange();
        at.ida.exchange(at.world.sharedFolder());
        compare(at.ida.fieldOf("visit", at.visit, "pest"), 50);
    }

    function test_severalAreSettledAtOnce() {
        const at = made();
        const ida = at.world.joinAnother("Ida", "coordinator", "phone");
        const second = at.world.addCount(at.trap, "2026-07-13", 10);
        at.world.exchange();
        ida.exchange(at.world.sharedFolder());
        for (const visit of [at.visit, second]) {
            ida.change("visit", visit, noSite, { pest: 5 });
            at.world.keepRecord("visit", { pest: 6 }, visit);
        }
        ida.exchange(at.world.sharedFolder());
        at.world.exchange();
        const page = questions(at);
        compare(page.model.differences.count, 2);
        tap(find(page, "difference0"), "choice0");
        tap(find(page, "difference1"), "choice0");
        compare(find(page, "settle").text, "Settle 2");
        const before = at.world.changes();
        tap(page, "settle");
        tryCompare(page.model.differences, "count", 0);
        compare(at.world.changes(), before + 2);
    }

    function test_whatWasKeptAsideIsLetInWithOneTap() {
        const at = made();
        const tom = at.world.joinAnother("Tom", "grower", "phone");
        tom.addCount(at.trap, at.site, "2026-07-13", 12);
        tom.exchange(at.world.sharedFolder());
        at.world.exchange();
        compare(at.world.recordsOf("visit").length, 1, "it is not his field");
        const page = questions(at);
        compare(page.model.aside.count, 1);
        const row = find(find(page, "aside"), "row0");
        verify(row.title.includes("Slough corner"), row.title);
        verify(find(row, "rowReason").text.includes("neither its author's nor lent"), find(row, "rowReason").text);
        tap(row, "act");
        tryVerify(() => at.world.recordsOf("visit").length === 2);
        tryCompare(page.model.aside, "count", 0);
    }

    // Tom has a field of his own; a visit there stands, and he changes it.
    function proposed() {
        const at = made();
        at.tom = at.world.joinAnother("Tom", "grower", "phone");
        at.own = "0190a5b2-7c11-7d3e-9f10-6d2b8e4f7a55";
        const trap = "0190a5b2-7c11-7d3e-9f10-6d2b8e4f7a56";
        at.tom.change("site", at.own, at.own, { name: "Poplar bend", keeper: at.tom.member, season: at.world.fieldOf(at.site, "season") });
        at.tom.change("trap", trap, at.own, { site: at.own, season: at.world.fieldOf(at.site, "season"), tag: "bertha 2", pest: "bertha-armyworm", set_day: "2026-06-04" });
        at.tomsVisit = at.tom.addCount(trap, at.own, "2026-07-06", 20);
        at.tom.exchange(at.world.sharedFolder());
        at.world.exchange();
        at.world.standsNow(at.tomsVisit);
        at.world.exchange();
        at.tom.exchange(at.world.sharedFolder());
        at.tom.change("visit", at.tomsVisit, at.own, { pest: 21 });
        at.tom.exchange(at.world.sharedFolder());
        at.world.exchange();
        return at;
    }

    function pestNow(at) {
        at.world.exchange();
        at.tom.exchange(at.world.sharedFolder());
        return at.tom.fieldOf("visit", at.tomsVisit, "pest");
    }

    function test_aProposalIsTaken() {
        const at = proposed();
        const page = questions(at);
        compare(page.model.proposals.count, 1);
        compare(pestNow(at), 20, "it does not count yet");
        tryVerify(() => findChild(find(page, "proposals"), "row0"));
        wait(200); // until the list was made anew
        const row = find(find(page, "proposals"), "row0");
        verify(row.flags.join().includes("21 moths"), row.flags.join());
        tap(row, "act");
        tryCompare(page.model.proposals, "count", 0);
        compare(pestNow(at), 21);
        tryVerify(() => page.model.isEmpty, 5000, "and the record stands with it");
    }

    function test_aProposalIsLeft() {
        const at = proposed();
        const page = questions(at);
        tap(find(find(page, "proposals"), "row0"), "other");
        tryCompare(page.model.proposals, "count", 0);
        compare(pestNow(at), 20);
        tryVerify(() => page.model.isEmpty, 5000, "and the record stands as it was");
    }

    function test_theHistoryOfARecordSaysWhatDoesNotCount() {
        const at = proposed();
        const history = show(at, "history", "visit/" + at.tomsVisit);
        verify(find(history, "marks").text.includes("A change is proposed to it"), find(history, "marks").text);
        verify(find(history, "change0").flags.join("\n").includes("Not counted."), find(history, "change0").flags.join("\n"));
    }
}
