// SPDX-License-Identifier: MIT
// A question from the desk to whoever has the trap, and back, with two devices: by taps and keys at both ends.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

DeskStory {
    id: test

    name: "DeskQuestion"

    // Tom keeps a trap, with a device of his own; his two counts of one day get a flag.
    function askable() {
        const at = season();
        at.tom = at.world.joinAnother("Tom Fields", "grower", "Tom’s phone");
        at.poplar = at.world.fieldOf(at.toms, "site");
        at.world.keepRecord("site", { keeper: at.tom.member }, at.poplar);
        for (const trap of [at.trap, at.toms, at.idas])
            for (const day of ["2026-06-15", "2026-06-29"])
                at.world.addCount(trap, day, 28);
        at.world.addCount(at.toms, "2026-07-06", 30);
        at.twice = at.world.addCount(at.toms, "2026-07-06", 30);
        at.world.exchange();
        at.tom.exchange(at.world.sharedFolder());
        return at;
    }

    function exchangeBoth(at) {
        at.world.exchange();
        at.tom.exchange(at.world.sharedFolder());
        at.world.exchange();
    }

    function askByKeys(at, page) {
        pick(page, "flags");
        compare(page.model.flagged, 1);
        at.asked = page.model.asked;
        keyClick("k");
        const words = find(at.main.contentItem.parent, "questionWords");
        tryVerify(() => words.visible);
        compare(words.text, "Two visits to this trap on this day both say 30 moths. Is it right?");
        tryCompare(focusOf(at), "objectName", "questionYes");
        keyClick(Qt.Key_Space);
        tryVerify(() => page.model.questions.count === 1);
        at.question = find(page, "question0").key;
    }

    function test_askedAndAnsweredBesideTheFlag() {
        const at = askable();
        const page = desk(at);
        askByKeys(at, page);
        compare(page.model.flagged, 1, "a flag and its question are one line");
        verify(find(page, "line0").besides.endsWith("asked"), find(page, "line0").besides);
        const card = find(page, "question0");
        compare(card.title, "Wren asked Tom Fields, 14 Jul");
        compare(card.besides, "No answer yet.");
        exchangeBoth(at);
        compare(at.tom.fieldOf("question", at.question, "words"), "Two visits to this trap on this day both say 30 moths. Is it right?");
        compare(at.tom.fieldOf("question", at.question, "record"), at.asked);
        at.tom.change("answer", at.tom.answerTo(at.question), at.poplar, { question: at.question, trap: at.toms, day: "2026-07-06",
                answered: "right", words: "I went twice." });
        exchangeBoth(at);
        tryVerify(() => page.model.questions.count === 1 && find(page, "question0").besides.startsWith("Tom Fields answered"));
        compare(find(page, "question0").besides, "Tom Fields answered, 14 Jul: It is right. I went twice.");
        verify(find(page, "line0").besides.endsWith("answered"));
        keyClick("s");
        tryCompare(page.model, "flagged", 0, 5000, "it stands, and the question is settled with it");
        compare(at.world.fieldOf("question", at.question, "settled"), true);
        compare(page.model.questions.count, 0);
    }

    function test_aCountWithoutAFlag() {
        const at = askable();
        const page = desk(at);
        keyClick("p");
        wait(0);
        compare(page.model.title, "Slough corner · bertha 1");
        keyClick("k");
        const words = find(at.main.contentItem.parent, "questionWords");
        tryVerify(() => words.visible);
        compare(words.text, "Is this count right: 47 moths?");
        tap(at.main.contentItem.parent, "questionYes");
        tryVerify(() => page.model.questions.count === 1);
        pick(page, "flags");
        compare(page.model.flagged, 2, "the question waits beside the flag of another trap");
        const row = page.model.lines.rowOf("question/" + find(page, "question0").key);
        compare(find(page, "line" + row).amount, "asked");
        tap(page, "settled");
        tryCompare(page.model, "flagged", 1);
        tryVerify(() => !page.model.isChecking);
        compare(page.model.flagged, 1);
    }

    // What somebody writes whose trap it is not is no answer.
    function test_othersDoNotAnswer() {
        const at = askable();
        const page = desk(at);
        const gus = at.world.joinAnother("Gus", "grower", "Gus’s phone");
        askByKeys(at, page);
        gus.exchange(at.world.sharedFolder());
        gus.change("answer", gus.answerTo(at.question), at.poplar, { question: at.question, trap: at.toms, day: "2026-07-06", answered: "right" });
        gus.change("question", at.question, at.poplar, { settled: true });
        gus.exchange(at.world.sharedFolder());
        exchangeBoth(at);
        tryVerify(() => !page.model.isChecking);
        compare(find(page, "question0").besides, "No answer yet.");
        compare(page.model.questions.count, 1);
    }
}
