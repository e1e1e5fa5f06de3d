// SPDX-License-Identifier: MIT
// The season as a whole: what it says, what can be corrected, the calendar file, and the year after it.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

TestCase {
    id: test

    name: "Year"
    when: windowShown

    Component {
        id: worldMaker
        World {
            today: "2026-07-14"
        }
    }

    Component {
        id: autumn
        World {
            today: "2026-10-02"
        }
    }

    function find(root: Item, name: string): Item {
        const found = findChild(root, name);
        verify(found, name);
        return found;
    }

    function open(world: World): var {
        const main = world.openWindow(390, 844);
        waitForRendering(main.contentItem);
        mouseClick(find(main.contentItem, "tab_year"));
        tryVerify(() => find(main.contentItem, "place").item.model.programme === "Willow bend");
        return main;
    }

    function page(world: World, route: string, subject: string): var {
        const main = world.openWindow(390, 844, route, subject);
        waitForRendering(main.contentItem);
        return main;
    }

    function replaceText(box: Item, text: string) {
        box.forceActiveFocus();
        box.selectAll();
        for (const c of text)
            keyClick(c);
    }

    function test_theSeasonSaysItsWeekProtocolsAndPeople() {
        const world = createTemporaryObject(worldMaker, test);
        const main = open(world);
        compare(find(main.contentItem, "pageHead").title, "Season 2026");
        compare(find(main.contentItem, "protocol").title, "Bertha armyworm");
        verify(find(main.contentItem, "protocol").subtitle.startsWith("protocol 2026-1"));
        compare(find(main.contentItem, "person").label, "Wren");
        compare(find(main.contentItem, "person").value, "grower, you");
        verify(!find(main.contentItem, "rollOver").visible, "the season is not over");
    }

    function test_theProgrammeIsCorrected() {
        const world = createTemporaryObject(worldMaker, test);
        const before = world.changes();
        const main = page(world, "programme", "");
        const form = find(main.contentItem, "pages").currentItem;
        replaceText(findChild(find(form, "name"), "box"), "Oak hill");
        find(find(form, "countDay"), "chip_2").clicked();
        find(form, "addDistrict").clicked();
        tryVerify(() => form.model.districts.length === 2);
        waitForRendering(main.contentItem);
        replaceText(findChild(lastDistrict(form), "box"), "Elm flats");
        mouseClick(find(form, "keep"));
        tryVerify(() => find(main.contentItem, "pages").depth === 0);
        compare(world.changes(), before + 3, "programme, season, a new district");
        compare(world.app.state, App.Open);
        mouseClick(find(main.contentItem, "tab_year"));
        compare(find(main.contentItem, "place").item.model.programme, "Oak hill");
    }

    function lastDistrict(item: Item): Item {
        let last = null;
        for (let i = 0; i < item.children.length; ++i) {
            const below = item.children[i].objectName === "district" ? item.children[i] : lastDistrict(item.children[i]);
            last = below ?? last;
        }
        return last;
    }

    function test_aProgrammeWithoutANameIsNotKept() {
        const world = createTemporaryObject(worldMaker, test);
        const before = world.changes();
        const main = page(world, "programme", "");
        const form = find(main.contentItem, "pages").currentItem;
        const box = findChild(find(form, "name"), "box");
        box.forceActiveFocus();
        box.selectAll();
        keyClick(Qt.Key_Delete);
        verify(find(form, "name").error.length > 0);
        mouseClick(find(form, "keep"));
        compare(world.changes(), before);
        compare(find(main.contentItem, "pages").depth, 1);
    }

    function test_theCalendarFileIsWrittenWhereItSays() {
        const world = createTemporaryObject(worldMaker, test);
        const trap = world.addTrap("Slough corner", "bertha 1", "2026-06-04", 49.9, -97.2);
        world.addCount(trap, "2026-07-13", 12);
        const main = page(world, "calendar", "");
        const form = find(main.contentItem, "pages").currentItem;
        replaceText(findChild(find(form, "folder"), "box"), world.folder());
        mouseClick(find(form, "write"));
        tryVerify(() => find(form, "written").visible);
        verify(find(form, "written").text.includes(world.folder() + "/duskrow-2026.ics"));
        const text = world.fileText("duskrow-2026.ics");
        verify(text.startsWith("BEGIN:VCALENDAR"));
        verify(text.includes("DTSTART;VALUE=DATE:20260720"), "the next count day");
        verify(text.includes("SUMMARY:Count: Slough corner"));
        const counts = text.split("SUMMARY:Count:").length - 1;
        compare(text.split("BEGIN:VALARM").length - 1, counts, "one alarm a count day and none besides");
    }

    function test_aFolderThatIsNotThereSaysSo() {
        const world = createTemporaryObject(worldMaker, test);
        const main = page(world, "calendar", "");
        const form = find(main.contentItem, "pages").currentItem;
        replaceText(findChild(find(form, "folder"), "box"), world.folder() + "/nowhere");
        mouseClick(find(form, "write"));
        tryVerify(() => find(form, "trouble").visible);
        verify(!find(form, "written").visible);
    }

    function test_theProtocolSaysEveryCautionAndFigure() {
        const world = createTemporaryObject(worldMaker, test);
        const main = page(world, "protocol", "bertha-armyworm");
        const sheet = find(main.contentItem, "pages").currentItem;
        compare(sheet.title, "Bertha armyworm");
        compare(sheet.model.cautions.count, 9);
        verify(sheet.model.figures.count > 40);
        find(find(sheet, "part"), "chip_figures").clicked();
        tryVerify(() => findChild(sheet, "figure"));
        compare(findChild(sheet, "figure").key, "The trap");
        find(find(sheet, "part"), "chip_sources").clicked();
        tryVerify(() => findChild(sheet, "source"));
    }

    function test_nextYearIsBegunOnDemand() {
        const world = createTemporaryObject(autumn, test);
        const trap = world.addTrap("Slough corner", "bertha 1", "2026-06-04", 49.9, -97.2);
        const before = world.changes();
        const main = open(world);
        const button = find(main.contentItem, "rollOver");
        verify(button.visible);
        compare(button.text, "Begin 2027 with the same people");
        button.clicked();
        const sheet = findChild(find(main.contentItem, "place").item, "askRollOver");
        tryVerify(() => sheet.opened);
        findChild(sheet.contentItem, "yes").clicked();
        tryVerify(() => find(main.contentItem, "begunLine").visible);
        compare(find(main.contentItem, "begunLine").text, "2027 is ready: it opens on 1 January.");
        compare(world.changes(), before + 2, "the season and its protocol; no trap, no site");
        verify(!button.visible);
        compare(find(main.contentItem, "pageHead").title, "Season 2026", "the present season goes on");
    }

    function test_settingsHoldOnThisDevice() {
        const world = createTemporaryObject(worldMaker, test);
        const main = page(world, "settings", "");
        const form = find(main.contentItem, "pages").currentItem;
        mouseClick(find(find(form, "light"), "chip_2"));
        compare(world.app.settings.dark, true);
        mouseClick(find(find(form, "size"), "chip_150"));
        compare(world.app.settings.textScale, 1.5);
        compare(find(form, "storePath").value, world.app.storePath);
        world.restart();
        compare(world.app.settings.textScale, 1.5);
    }
}
