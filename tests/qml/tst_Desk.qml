// SPDX-License-Identifier: MIT
// A coordinator's week, by keys and taps: who has reported, and who is late.
import QtQuick
import QtTest

DeskStory {
    id: test

    name: "Desk"

    function test_whoHasReported() {
        const at = season();
        const page = desk(at);
        compare(page.model.weekLine, "13 Jul to 19 Jul");
        compare(page.model.totalLine, "0 of 3 in", "the grace lasts until today: nobody is late");
        keyClick("p");
        compare(page.model.weekLine, "6 Jul to 12 Jul");
        compare(page.model.totalLine, "2 of 3 in, 1 of them could not be counted, 1 late");
        const line = row => find(find(page, "table"), "line" + row);
        // By district, the traps of none last.
        tryVerify(() => findChild(page, "line2"));
        compare([0, 1, 2].map(row => line(row).title), ["Slough corner · bertha 1", "Elm flats · bertha 3", "Poplar bend · bertha 2"]);
        compare([0, 1, 2].map(row => line(row).amount), ["47 moths", "could not count", "late"]);
        compare(line(2).besides, "Tom");
        keyClick("n");
        compare(page.model.weekLine, "13 Jul to 19 Jul");
        keyClick("n");
        compare(page.model.weekLine, "13 Jul to 19 Jul", "there is no week after this one yet");
    }

    function test_theKeyboardAlone() {
        const at = season();
        const page = desk(at);
        keyClick("p");
        wait(0);
        compare(focusOf(at).objectName, "line0");
        compare(page.model.title, "Slough corner · bertha 1");
        keyClick(Qt.Key_Down);
        keyClick(Qt.Key_Down);
        compare(focusOf(at).objectName, "line2");
        compare(page.model.title, "Poplar bend · bertha 2");
        keyClick(Qt.Key_Return);
        compare(focusOf(at).objectName, "mail", "what can be done has the keyboard");
        keyClick(Qt.Key_Tab);
        compare(focusOf(at).objectName, "copy");
        keyClick(Qt.Key_Space);
        verify(page.model.copied);
        keyClick(Qt.Key_Escape);
        compare(focusOf(at).objectName, "line2");
        keyClick("t");
        tryVerify(() => pageOn(at).typing !== undefined);
        compare(pageOn(at).typing.weekLine.length > 0 || !pageOn(at).typing.isRead, true);
        keyClick(Qt.Key_Escape);
        tryVerify(() => pageOn(at).model === page.model);
        keyClick(Qt.Key_Escape);
        compare(find(at.main.contentItem, "pages").depth, 0, "and out");
    }

    function test_aMessageToWhoIsLate() {
        const at = season();
        at.world.addTrapOf("Tom", "Old ferry", "bertha 4", "2026-06-04"); // another Tom: a record of his own
        at.world.listenToUrls("mailto");
        const page = desk(at);
        keyClick("p");
        pick(page, "late");
        compare(page.model.lines.count, 2);
        if (!page.model.message.includes("Poplar bend"))
            keyClick(Qt.Key_Down); // two of one name stand in any order
        compare(page.model.message.split("\n")[0], "Hello Tom,");
        verify(page.model.message.includes("6 Jul to 12 Jul"));
        verify(page.model.message.includes("- Poplar bend · bertha 2"), page.model.message);
        verify(!page.model.message.includes("Old ferry"), "nor what the other one keeps");
        verify(page.model.message.includes("Zero is a count too"));
        verify(page.model.message.endsWith("Thank you,\nWren"), page.model.message);
        keyClick("w");
        tryVerify(() => at.world.openedUrls().length === 1);
        const url = at.world.openedUrls()[0];
        verify(url.startsWith("mailto:?subject=Trap%20counts%20of%20the%20week%206%20Jul"), url);
        verify(url.includes("%0D%0A-%20Poplar%20bend"), url);
    }

    function test_onAPhoneOneAfterTheOther() {
        const at = season();
        const page = desk(at, 360, 640);
        verify(!find(page, "detail").visible);
        keyClick("p");
        wait(0);
        const table = find(find(page, "table"), "list");
        table.positionViewAtIndex(2, ListView.Contain);
        tap(find(page, "line2"), "card");
        verify(find(page, "detail").visible && !find(page, "table").visible);
        compare(find(find(page, "detail"), "title").text, "Poplar bend · bertha 2");
        keyClick(Qt.Key_Escape);
        verify(find(page, "table").visible);
        compare(find(at.main.contentItem, "pages").depth, 1);
    }

    function test_theWayToTheDesk() {
        const at = season();
        at.main = at.world.openWindow(390, 844);
        waitForRendering(at.main.contentItem);
        tryVerify(() => at.world.app.isCoordinator, 5000, "who is alone may say everything");
        at.main.goTo("year");
        tryVerify(() => findChild(at.main.contentItem, "desk"));
        tap(at.main.contentItem, "desk");
        tryVerify(() => pageOn(at).model.isRead);
    }
}
