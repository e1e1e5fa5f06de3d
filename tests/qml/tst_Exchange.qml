// SPDX-License-Identifier: MIT
// Exchanging by the screens: a folder chosen, what came in, what waits, one file written and opened.
import QtQuick
import QtTest
import Duskrow.Testing

ExchangeStory {
    id: test

    name: "Exchange"

    function idle(page) {
        tryVerify(() => !page.model.exchanger.running, 10000);
    }

    function test_aFolderIsChosenAndWhatIsHereIsHandedOver() {
        const at = made();
        const page = show(at, "exchange");
        tryVerify(() => page.model.here > 0);
        const entries = page.model.here;
        compare(find(page, "here").count, entries);
        compare(page.model.handedOver, 0);
        verify(!find(page, "exchangeNow").visible, "there is no way yet");
        tap(page, "addFolder");
        verify(find(page, "folderNote").text.includes("can read all of it"));
        paste(page, "folder", at.world.sharedFolder());
        tap(page, "takeFolder");
        tryCompare(page.model, "handedOver", entries, 10000);
        compare(page.model.here, 0);
        compare(page.model.atHub, 0);
        tryVerify(() => findChild(page, "way0"));
        const way = find(page, "way0");
        compare(way.title, "The folder “shared”");
        verify(find(way, "wayDetail").text.includes("handed over"), find(way, "wayDetail").text);
        compare(find(way, "wayTrouble").text, "");
        at.world.addCount(at.trap, "2026-07-13", 12);
        tryCompare(page.model, "here", 1);
        tap(page, "exchangeNow");
        tryCompare(page.model, "here", 0, 10000);
        at.world.restart();
        const again = show(at, "exchange");
        tryVerify(() => findChild(again, "way0"), 5000, "the way is known after a restart");
    }

    function test_aFolderThatIsNotThereSaysWhatToDo() {
        const at = made();
        const page = show(at, "exchange");
        chooseFolder(page, at.world.folder() + "/nowhere");
        tryVerify(() => find(page, "trouble").visible);
        verify(find(page, "trouble").text.includes("is not there"));
        compare(page.model.ways.count, 0);
    }

    function test_whatAnotherEnteredStandsOnEveryScreen() {
        const at = made();
        const ida = at.world.joinAnother("Ida", "coordinator", "phone");
        const page = show(at, "exchange");
        chooseFolder(page, at.world.sharedFolder());
        tryVerify(() => page.model.ways.count === 1);
        idle(page);
        at.main.open("season", at.trap);
        const season = pageOn(at);
        compare(season.model.visits.count, 1);
        ida.addCount(at.trap, at.site, "2026-07-13", 12);
        ida.exchange(at.world.sharedFolder());
        page.model.exchanger.exchange();
        tryCompare(season.model.visits, "count", 2, 10000);
        tryVerify(() => page.model.exchanger.said.includes("One new entry came in"));
    }

    function test_eachRecordSaysHowFarItGot() {
        const at = made();
        const history = show(at, "history", "visit/" + at.visit);
        compare(find(history, "marks").text, "", "one who keeps a season alone is not told");
        at.main.open("exchange", "");
        const page = pageOn(at);
        chooseFolder(page, at.world.sharedFolder());
        tryCompare(page.model, "here", 0, 10000);
        const before = show(at, "history", "visit/" + at.visit);
        compare(find(before, "marks").text, "Handed over");
        const later = at.world.addCount(at.trap, "2026-07-13", 3);
        compare(find(show(at, "history", "visit/" + later), "marks").text, "On this phone");
    }

    function test_aFileIsWrittenForEverybody() {
        const at = made();
        const page = show(at, "exchange");
        tap(page, "writeFile");
        paste(page, "fileFolder", at.world.folder());
        tap(page, "write");
        tryVerify(() => find(page, "written").visible, 10000);
        verify(find(page, "written").text.includes("duskrow-2026-07-14.dusk"));
        tryVerify(() => page.model.handedOver > 0);
    }

    function test_aFileIsLookedIntoBeforeItIsTakenIn() {
        const at = made();
        const ida = at.world.joinAnother("Ida", "coordinator", "phone");
        ida.addCount(at.trap, at.site, "2026-07-13", 12);
        const path = at.world.folder() + "/ida.dusk";
        ida.writeFile(path);
        const page = show(at, "exchange");
        tap(page, "openFile");
        paste(page, "file", path);
        tap(page, "look");
        const preview = pageOn(at);
        tryVerify(() => preview.model.isRead, 10000);
        compare(preview.model.newEntries, 1);
        compare(find(preview, "from0").label, "Ida’s phone");
        compare(at.world.recordsOf("visit").length, 1, "nothing is taken in yet");
        tap(preview, "takeIn");
        tryVerify(() => find(preview, "taken").visible, 10000);
        compare(at.world.recordsOf("visit").length, 2);
        verify(!find(preview, "takeIn").visible);
    }

    function test_aForeignFileIsNotTakenIn() {
        const at = made();
        const path = at.world.folder() + "/programme.duskrow";
        const preview = show(at, "carried", path);
        tryVerify(() => find(preview, "trouble").visible, 10000);
        verify(find(preview, "trouble").text.includes("is not a file that Duskrow wrote"));
        verify(!find(preview, "takeIn").visible);
    }

    function test_aFileOfAnotherProgrammeSaysSo() {
        const at = made();
        const other = at.world.otherProgramme("Elm flats", "Otto");
        const path = at.world.folder() + "/elm.dusk";
        other.writeFile(path);
        const preview = show(at, "carried", path);
        tryVerify(() => find(preview, "caution").visible, 10000);
        verify(find(preview, "caution").text.includes("another programme"));
        verify(!find(preview, "takeIn").visible);
    }

    function test_aFileOpenedFromOutsideIsShownFirst() {
        const at = made();
        const file = at.world.writeFile();
        const again = made({ opened: file });
        show(again);
        const preview = pageOn(again);
        compare(preview.model.fileName, "own.dusk");
    }

    function test_whatWasStoppedGoesOnLater() {
        const at = made();
        const page = show(at, "exchange");
        tryVerify(() => page.model.here > 0);
        const entries = page.model.here;
        verify(page.model.addFolder(at.world.sharedFolder()));
        page.model.writeFile(at.world.folder(), "");
        page.model.exchanger.stop();
        idle(page);
        tryVerify(() => page.model.written.startsWith("Stopped"), 5000, "what only waited is answered too");
        page.model.exchanger.exchange();
        idle(page);
        tryCompare(page.model, "handedOver", entries, 10000);
        compare(page.model.here, 0);
    }

    function test_whatWaitsForWhom() {
        const at = made();
        const ida = at.world.joinAnother("Ida", "coordinator", "phone");
        for (const day of ["2026-07-12", "2026-07-13"]) {
            ida.addCount(at.trap, at.site, day, 12);
            ida.exchange(at.world.sharedFolder());
        }
        at.world.loseFileOf(ida);
        at.world.exchange();
        compare(at.world.recordsOf("visit").length, 1, "the later entry is not used before the earlier one");
        const page = show(at, "exchange");
        tryVerify(() => findChild(page, "waiting0"));
        compare(find(page, "waiting0").text, "Waiting for 2 entries from Ida’s phone");
        const file = at.world.folder() + "/all.dusk";
        ida.writeFile(file);
        at.main.open("carried", file);
        const preview = pageOn(at);
        tryVerify(() => preview.model.isRead, 10000);
        tap(preview, "takeIn");
        tryVerify(() => find(preview, "taken").visible, 10000);
        compare(at.world.recordsOf("visit").length, 3);
        tryVerify(() => page.model.waiting.count === 0);
    }

    function test_aWayIsGivenUp() {
        const at = made();
        const page = show(at, "exchange");
        chooseFolder(page, at.world.sharedFolder());
        tryVerify(() => page.model.ways.count === 1);
        idle(page);
        tryVerify(() => find(find(page, "way0"), "wayDetail").text.includes("handed over"));
        tap(find(page, "way0"), "removeWay");
        tryCompare(page.model.ways, "count", 0);
        verify(!find(page, "exchangeNow").visible);
    }
}
