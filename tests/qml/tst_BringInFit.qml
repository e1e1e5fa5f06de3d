// SPDX-License-Identifier: MIT
// A table that is looked at, and a question that waits for its answer, in every size, light and size of type.
import QtQuick
import QtTest
import Duskrow.Testing

WalkCase {
    id: test

    name: "BringInFit"

    Component {
        id: worldMaker
        World {
            today: "2026-07-14"
        }
    }

    function test_everyLookOfAnImport_data() {
        return looks();
    }

    function test_everyLookOfAnImport(look) {
        const world = createTemporaryObject(worldMaker, test);
        dress(world, look);
        fill(world);
        const table = "Site name,Nearest town,Trap,Date,Count,Entrance (cm),Phone\n"
            + "Slough corner by the old grain elevator,Wadena,1,03/04/2024,12,120,5550100\n"
            + "Poplar bend,Foam Lake,1,04/05/2024,many,118,5550101\n" + "Poplar bend,Foam Lake,1,25/06/2024,47,118,5550101\n";
        const file = world.putFile("counts of the years before, as they were kept.csv", table);
        const main = world.openWindow(look.w, look.h, "import", "");
        waitForRendering(main.contentItem);
        const page = find(main.contentItem, "pages").currentItem;
        const complaints = [];
        judge(main, "no file yet", complaints);
        page.model.open(file);
        tryVerify(() => page.model.isSeen && !page.model.isReading);
        wait(50);
        judge(main, "looked at", complaints);
        find(page, "column1").isOpen = true;
        find(page, "form_encoding").clicked();
        wait(50);
        judge(main, "set right", complaints);
        page.model.chooseColumn("2", "ignore"); // a town and a site may both be the site
        tryVerify(() => !page.model.isReading);
        wait(50);
        judge(main, "said which column", complaints);
        compare(page.model.missing + page.model.trouble, "");
        verify(page.model.canBring);
        page.model.bring();
        tryVerify(() => page.model.doneLine.length > 0 && !page.model.isRunning);
        page.model.forget();
        wait(50);
        judge(main, "brought in", complaints);
        find(page, "earlier0").clicked();
        tryVerify(() => page.model.undoLine.startsWith("Taken back"));
        wait(100);
        judge(main, "taken back", complaints);
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }

    function test_everyLookOfAQuestion_data() {
        return looks();
    }

    function test_everyLookOfAQuestion(look) {
        const world = createTemporaryObject(worldMaker, test);
        dress(world, look);
        const ids = fill(world);
        for (const words of ["20 moths are far below the traps around: 3 kept by others have a median of 214. Is it right?", "Was the lure new?"])
            world.keepRecord("question", { record: ids.visit, trap: ids.trap, member: ids.member, day: "2026-07-06", words });
        const main = world.openWindow(look.w, look.h, "", "");
        waitForRendering(main.contentItem);
        main.goTo("today");
        const complaints = [];
        const card = find(main.contentItem, "questionCard");
        tryVerify(() => card.visible);
        judge(main, "a question", complaints);
        find(card, "itIsRight").clicked();
        tryVerify(() => card.questions.count === 1 && !card.questions.busy);
        judge(main, "answered", complaints);
        verify(complaints.length === 0, "\n  " + complaints.join("\n  ") + "\n");
    }
}
