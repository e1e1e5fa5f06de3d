// SPDX-License-Identifier: MIT
// Phoned or texted that there is nothing to count.
import QtQuick
import QtTest
import Duskrow.Testing

TypingStory {
    id: test

    name: "TypingNoCount"
    visible: true
    width: 400
    height: 400

    // Somebody phones that the trap lay on the ground: by keys alone, then by taps.
    function test_couldNotCount() {
        const at = season();
        const page = typing(at);
        const row = find(page, "row0");
        tryVerify(() => box(page, 0).activeFocus);
        words("12");
        keyClick(Qt.Key_Tab);
        verify(box(page, 0, "who").activeFocus);
        keyClick(Qt.Key_Tab);
        verify(find(row, "none").activeFocus);
        verify(!find(row, "reasons").visible);
        keyClick(Qt.Key_Space);
        verify(find(row, "reasons").visible);
        keyClick(Qt.Key_Tab);
        verify(find(row, "chip_fallen").activeFocus);
        keyClick(Qt.Key_Right);
        keyClick(Qt.Key_Right);
        verify(find(row, "chip_flooded").activeFocus);
        keyClick(Qt.Key_Space);
        tryCompare(page.typing, "kept", 1);
        verify(box(page, 1).activeFocus, "the next row is at hand");
        compare(find(row, "below").text, "Kept: could not count on 13 Jul, by phone, from %1: bucket was flooded".arg(at.world.fieldOf(visitsOf(at)[0], "observer")));
        verify(!find(row, "reasons").visible && !find(row, "none").visible);
        tap(find(page, "row1"), "none");
        tap(find(page, "row1"), "chip_access");
        tryCompare(page.typing, "kept", 2);
        const byReason = reason => visitsOf(at).find(visit => at.world.fieldOf(visit, "reason") === reason);
        for (const reason of ["flooded", "access"]) {
            compare(at.world.fieldOf(byReason(reason), "outcome"), "could_not_count");
            compare(at.world.fieldOf(byReason(reason), "pest"), undefined, "what was typed before is no count");
            compare(at.world.fieldOf(byReason(reason), "reported_how"), "phone");
        }
        compare(at.world.fieldOf(byReason("flooded"), "at_least"), true);
        compare(at.world.fieldOf(byReason("access"), "emptied"), false);
        compare(at.world.draftKeys().filter(key => key.startsWith("typed/")), []);
    }

    function test_noCountNeedsAPersonToo() {
        const at = season();
        const page = typing(at);
        const who = box(page, 0, "who");
        who.forceActiveFocus();
        who.selectAll();
        keyClick(Qt.Key_Delete);
        tap(find(page, "row0"), "none");
        tap(find(page, "row0"), "chip_missing");
        compare(find(find(page, "row0"), "error").text, "Say who reported it.");
        compare(visitsOf(at).length, 0);
        tap(find(page, "row0"), "none");
        verify(!find(find(page, "row0"), "reasons").visible, "it was counted after all");
    }
}
