// SPDX-License-Identifier: MIT
// A coordinator’s question on the grower’s phone: it comes, is answered in three ways, and goes back.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

ExchangeStory {
    id: test

    name: "Question"

    visible: true
    width: 400
    height: 400

    readonly property string question: "01980a5c-1000-7000-8000-0000000000a1"
    readonly property string second: "01980a5c-1000-7000-8000-0000000000a2"

    // Tom has joined Otto’s programme, set up a trap; Otto asks about a count there.
    function askedTom() {
        const at = made({ begun: false });
        at.other = at.world.otherProgramme("Elm flats", "Otto");
        const link = at.other.invite("Tom", "grower", "2026-09-30", "");
        at.other.exchange(at.world.sharedFolder());
        show(at);
        tap(find(at.main.contentItem, "how"), "chip_join");
        tryVerify(() => findChild(at.main.contentItem, "code"));
        paste(at.main.contentItem, "code", link);
        tap(find(at.main.contentItem, "from"), "chip_folder");
        paste(at.main.contentItem, "folder", at.world.sharedFolder());
        tap(at.main.contentItem, "join");
        tryCompare(at.world.app, "state", App.Open, 20000);
        at.trap = at.world.addTrap("Slough corner", "bertha 1", "2026-06-03", 52.1, -106.6);
        at.site = at.world.fieldOf(at.trap, "site");
        both(at);
        at.visit = at.other.addCount(at.trap, at.site, "2026-07-06", 47); // phoned, and typed in at the desk
        both(at);
        at.me = at.world.memberId("Tom");
        ask(at, test.question, "47 moths are far above the traps around. Is it right?");
        return at;
    }

    function ask(at, id, words) {
        at.other.change("question", id, at.site, { record: at.visit, trap: at.trap, member: at.me, day: "2026-07-06", words });
        both(at);
    }

    function both(at) {
        at.other.exchange(at.world.sharedFolder());
        at.world.exchange();
        at.other.exchange(at.world.sharedFolder());
        at.world.exchange();
    }

    function today(at) {
        show(at);
        at.main.goTo("today");
        const card = find(at.main.contentItem, "questionCard");
        tryVerify(() => card.visible);
        return card;
    }

    function answerOf(at, field) {
        both(at);
        return at.other.fieldOf("answer", at.other.answerTo(test.question), field);
    }

    function test_itIsRight() {
        const at = askedTom();
        const card = today(at);
        compare(find(card, "asker").text, "Asked by Otto, 14 Jul");
        compare(find(card, "question").text, "47 moths are far above the traps around. Is it right?");
        compare(find(card, "about").text, "Slough corner · bertha 1, 6 Jul: 47 moths");
        tap(card, "itIsRight");
        tryVerify(() => !card.visible);
        verify(find(at.main.contentItem, "answerKept").visible);
        compare(answerOf(at, "answered"), "right");
        at.world.restart();
        show(at);
        wait(200);
        verify(!find(at.main.contentItem, "questionCard").visible, "an answered question does not come back");
    }

    function test_inWords() {
        const at = askedTom();
        ask(at, test.second, "Was the lure new?");
        const card = today(at);
        tryVerify(() => find(card, "more").visible);
        compare(find(card, "more").text, "One more question comes after this one.");
        verify(!find(card, "answer").enabled);
        type(card, "answerWords", "They were on the lid too");
        tap(card, "answer");
        tryCompare(card.questions, "question", test.second);
        compare(find(find(card, "answerWords"), "box").text, "", "nor do words go to another question");
        compare(answerOf(at, "words"), "They were on the lid too");
        compare(at.other.fieldOf("answer", at.other.answerTo(test.second), "words"), undefined);
    }

    function test_theCountIsSetRight() {
        const at = askedTom();
        const card = today(at);
        tap(card, "setRight");
        tryVerify(() => findChild(at.main.contentItem, "pages").currentItem);
        const page = pageOn(at);
        compare(page.subject, "visit/" + at.visit);
        type(page, "entry_pest", "41");
        tap(page, "keep");
        tryVerify(() => at.world.fieldOf("visit", at.visit, "pest") === 41);
        tryVerify(() => !card.visible);
        compare(answerOf(at, "answered"), "corrected");
        compare(at.other.fieldOf("visit", at.visit, "pest"), 41);
    }
}
