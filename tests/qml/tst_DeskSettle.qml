// SPDX-License-Identifier: MIT
// What a coordinator settles: flags that stand, one or many, a count that is left out, what came in since last time.
import QtQuick
import QtTest

DeskStory {
    id: test

    name: "DeskSettle"

    // Two counts of one day that say the same, and one before the set-up: a flag each.
    function flagged() {
        const at = season();
        for (const trap of [at.trap, at.toms, at.idas])
            for (const day of ["2026-06-15", "2026-06-29"])
                at.world.addCount(trap, day, 28);
        at.world.addCount(at.toms, "2026-07-06", 30);
        at.twice = at.world.addCount(at.toms, "2026-07-06", 30);
        at.early = at.world.addCount(at.trap, "2026-06-01", 2);
        return at;
    }

    function test_manyFlagsStandAtOnce() {
        const at = flagged();
        const page = desk(at);
        compare(page.model.flagged, 2);
        pick(page, "flags");
        compare(page.model.lines.count, 2);
        tap(find(page, "line0"), "card");
        keyClick(Qt.Key_Escape); // from what can be done back to the line
        keyClick(Qt.Key_Space);
        compare(page.model.lines.marked, 1);
        keyClick("a");
        compare(page.model.lines.marked, 2);
        const before = at.world.changes();
        keyClick("s");
        tryCompare(page.model, "flagged", 0);
        compare(at.world.changes(), before + 2, "one word a visit");
        tryVerify(() => !page.model.isChecking);
        compare(page.model.flagged, 0, "nor are they found again");
        compare(at.world.fieldOf(at.twice, "pest"), 30, "a flag changes nothing");
    }

    function test_oneFlagWithItsReason() {
        const at = flagged();
        const page = desk(at);
        pick(page, "flags");
        const flag = find(page, "flag0");
        compare(find(flag, "reason").text, "Two visits to this trap on this day both say 30 moths.");
        compare(find(flag, "goodCounts").text, "Every two good counts that are alike get this flag; it may be real.");
        tap(flag, "correct");
        tryVerify(() => pageOn(at) !== page);
        compare(pageOn(at).subject, "visit/" + page.model.asked);
        at.main.back();
        tap(find(page, "flag0"), "stands");
        tryCompare(page.model, "flagged", 1);
        tryVerify(() => page.model.title.startsWith("Slough corner"), 5000, "the next one is chosen");
    }

    function test_aCountIsLeftOutWithAReason() {
        const at = flagged();
        const page = desk(at);
        pick(page, "flags");
        keyClick("l");
        const sheet = find(at.main.contentItem.parent, "leaveOutWhy");
        tryVerify(() => sheet.visible);
        keyClick(Qt.Key_Return);
        compare(sheet.error.length > 0, true, "not without a reason");
        for (const c of "typed twice")
            keyClick(c);
        keyClick(Qt.Key_Return);
        tryCompare(page.model, "flagged", 1);
        pick(page, "traps");
        const toms = page.model.lines.rowOf(at.toms);
        tap(find(page, "line" + toms), "card");
        const struck = () => [0, 1].map(i => findChild(page, "visit" + i)).find(visit => visit && visit.struck);
        tryVerify(struck);
        compare(struck().detail, "Left out: typed twice");
        tap(struck(), "letIn");
        tryVerify(() => !struck());
        tryCompare(page.model, "flagged", 2, 5000, "and it is looked at again");
    }

    function test_whatCameInSinceLastTime() {
        const at = made();
        const ida = at.world.joinAnother("Ida", "coordinator", "phone");
        let page = desk(at);
        compare(page.model.cameIn, 0, "who never looked begins now");
        ida.addCount(at.trap, at.site, "2026-07-13", 12);
        ida.exchange(at.world.sharedFolder());
        at.world.exchange();
        tryCompare(page.model, "cameIn", 1);
        at.world.restart();
        page = desk(at);
        compare(page.model.cameIn, 1, "until it is seen");
        pick(page, "new");
        compare(find(page, "line0").amount, "12 moths");
        tap(page, "looked");
        tryCompare(page.model, "cameIn", 0);
        at.world.restart();
        compare(desk(at).model.cameIn, 0);
    }
}
