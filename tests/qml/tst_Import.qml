// SPDX-License-Identifier: MIT
// Past years come in from a table, by taps and keys: looked at, set right, kept, stopped, taken back.
import QtQuick
import QtTest
import Duskrow.Testing

ExchangeStory {
    id: test

    name: "Import"

    visible: true
    width: 400
    height: 400

    readonly property string good: "site,trap,date,count\nElm flats,1,2024-06-10,3\nElm flats,1,2024-06-17,12\nPoplar bend,1,2024-06-10,0\n"

    function looking(at, text, isLatin1) {
        const file = at.world.putFile("old counts.csv", text, isLatin1 === true);
        const page = show(at, "import");
        paste(page, "file", file);
        tap(page, "look");
        tryVerify(() => !page.model.isReading);
        wait(0);
        return page;
    }

    function makesOf(page) {
        const all = {};
        for (let i = 0; i < page.model.makes.count; ++i) {
            const row = find(page, "make" + i);
            all[row.label] = row.value;
        }
        return all;
    }

    function bring(page) {
        tap(page, "bring");
        tryVerify(() => !page.model.isRunning && page.model.doneLine.length > 0, 20000);
        tryVerify(() => !page.model.isReading);
    }

    function test_lookedAtKeptAndTakenBack() {
        const at = made();
        const before = at.world.changes();
        const page = looking(at, test.good);
        compare(page.model.trouble, "");
        compare(makesOf(page)["New: visit"], "3");
        compare(makesOf(page)["New: site"], "2");
        compare(makesOf(page)["Names of new sites"], "Elm flats, Poplar bend");
        compare(at.world.changes(), before, "nothing is kept while it is looked at");
        bring(page);
        verify(page.model.doneLine.endsWith("records were brought in."), page.model.doneLine);
        compare(at.world.recordsOf("visit").length, 4);
        compare(makesOf(page)["Rows that are here already"], "3");
        verify(!find(page, "bring").enabled, "the same file twice adds nothing");
        tap(page, "other");
        compare(find(page, "earlier0").title, "old counts.csv");
        tap(page, "earlier0");
        const yes = find(at.main.contentItem.parent, "yes");
        tryVerify(() => yes.visible && page.model.undoLine.startsWith("Taken back"));
        verify(page.model.undoLine.includes("visit: 3"), page.model.undoLine);
        tap(at.main.contentItem.parent, "yes");
        tryVerify(() => !page.model.isRunning && page.model.doneLine.endsWith("records were taken back."), 20000);
        compare(at.world.recordsOf("visit").length, 1);
    }

    function test_columnsAreChosenByHand() {
        const at = made();
        const page = looking(at, "place;when;moths seen\nElm flats;10.06.2024;3\nElm flats;17.06.2024;4\n");
        verify(find(page, "missing").visible);
        verify(!page.model.canBring);
        for (const [column, code] of [["1", "site"], ["2", "day"], ["3", "pest"]]) {
            const item = find(page, "column" + column);
            tap(item, "card");
            tryVerify(() => findChild(item, "is"));
            wait(50);
            tap(find(item, "is"), "chip_" + code);
            tryVerify(() => !page.model.isReading);
            wait(0);
        }
        compare(page.model.missing, "");
        compare(makesOf(page)["New: visit"], "2");
        bring(page);
        compare(at.world.recordsOf("visit").length, 3);
    }

    function test_whatIsFoundIsChanged() {
        const at = made();
        const page = looking(at, "site,date,count\nElm flats,03/04/2024,3\nElm flats,04/04/2024,4\n");
        verify(page.model.missing.length > 0, "day or month first can not be known");
        verify(!find(page, "bring").enabled);
        tap(page, "form_order");
        tap(find(page, "chips_order"), "chip_month");
        tryVerify(() => !page.model.isReading && page.model.missing === "");
        bring(page);
        const days = at.world.recordsOf("visit").map(visit => at.world.fieldOf("visit", visit, "day")).sort();
        compare(days, ["2024-03-04", "2024-04-04", "2026-07-06"]);
    }

    // Counts of past years add up only where the traps were emptied: said on the screen, and by a column.
    function test_whetherTheTrapsWereEmptied_data() {
        return [
            { tag: "as protocols ask", text: test.good, chip: "", kept: true, says: "Yes," },
            { tag: "said otherwise", text: test.good, chip: "chip_no", kept: false, says: "No," },
            { tag: "nobody knows", text: test.good, chip: "chip_unsaid", kept: undefined, says: "Nobody knows." },
            { tag: "by a column", text: "site,date,count,emptied\nElm flats,2024-06-10,3,yes\n", chip: "chip_no", kept: true, says: "No," }
        ];
    }

    function test_whetherTheTrapsWereEmptied(data) {
        const at = made();
        const page = looking(at, data.text);
        compare(page.model.emptied, "yes");
        if (data.chip) {
            tap(find(page, "emptied"), data.chip);
            tryVerify(() => !page.model.isReading);
            wait(0);
        }
        verify(find(page, "emptiedLine").text.startsWith(data.says), find(page, "emptiedLine").text);
        bring(page);
        const brought = at.world.recordsOf("visit").filter(visit => at.world.fieldOf("visit", visit, "day").startsWith("2024"));
        verify(brought.length > 0);
        for (const visit of brought)
            compare(at.world.fieldOf("visit", visit, "emptied"), data.kept);
    }

    // One column a week: the year is said by hand, and the week is the programme's.
    function test_aColumnAWeek() {
        const at = made();
        const page = looking(at, "site,Week 24,Week 25\nElm flats,3,4\n");
        compare(makesOf(page)["Rows refused"], "2");
        verify(find(page, "refused0").text.startsWith("Line 2, column “Week 24”: Nothing says the year"), find(page, "refused0").text);
        type(page, "year", "2024");
        keyClick(Qt.Key_Return);
        tryVerify(() => !page.model.isReading);
        wait(0);
        compare(find(page, "refused").visible ? find(page, "refused0").text : "", "");
        compare(makesOf(page)["New: visit"], "2");
        type(page, "year", "20");
        wait(50); // the button comes with what is typed
        tap(page, "takeYear");
        verify(find(page, "trouble").visible);
    }

    function test_hostileFiles_data() {
        const formula = "=HYPERLINK(\"\"http://x\"\",\"\"y\"\")";
        return [
            { tag: "a huge line", text: "site,date,count\n" + "x".repeat(3000000) + ",2024-06-10,3\n", visits: 0 },
            { tag: "old letters", text: "site,date,count\nForêt à l'est,2024-06-10,3\n", latin: true, visits: 1 },
            { tag: "formula cells", text: "site,date,count\n\"" + formula + "\",2024-06-10,3\n", visits: 1 },
            { tag: "markup", text: "site,date,count,<b>x</b>\n<img src=x>,2024-06-10,3,<i>y</i>\n", visits: 1 },
            { tag: "cut in the middle", text: "site,date,count\nElm flats,2024-06-10,3\n\"Elm fl", visits: -1 },
            { tag: "no table", text: "\u0000\u0001\u0002\u0003".repeat(1000), visits: 0 },
            { tag: "empty", text: "", visits: 0 }
        ];
    }

    function test_hostileFiles(row) {
        const at = made();
        const page = looking(at, row.text, row.latin);
        if (!page.model.canBring) {
            verify(page.model.trouble.length > 0 || page.model.missing.length > 0 || page.model.makes.count > 0, "it says why");
            verify(row.visits <= 0, page.model.trouble + page.model.missing);
            return;
        }
        const visits = Number(makesOf(page)["New: visit"] ?? "0");
        verify(row.visits < 0 ? visits <= 1 : visits === row.visits, "visits: " + visits);
        bring(page);
        compare(at.world.recordsOf("visit").length, 1 + visits);
    }

    function test_stoppedOnTheWay() {
        const at = made();
        let text = "site,date,count\n";
        for (let site = 0; site < 60; ++site)
            for (let day = 1; day <= 30; ++day)
                for (const month of ["05", "06", "07"])
                    text += "Site " + site + ",2024-" + month + "-" + String(day).padStart(2, "0") + "," + site + "\n";
        const page = looking(at, text);
        compare(makesOf(page)["New: visit"].replace(/\D/g, ""), "5400");
        tap(page, "bring");
        verify(page.model.isRunning);
        verify(!page.canGoBack, "one does not walk away from it unseen");
        tap(find(page, "progress"), "stop");
        tryVerify(() => !page.model.isRunning, 20000);
        verify(page.model.doneLine.startsWith("Stopped after"), page.model.doneLine);
        tryVerify(() => page.model.canBring);
        bring(page);
        compare(at.world.recordsOf("visit").length, 5401, "the same file adds the rest");
    }
}
