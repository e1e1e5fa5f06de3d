// SPDX-License-Identifier: MIT
// Coming into a programme that others made: at the first start, from a season of one's own, and what goes wrong.
import QtQuick
import QtTest
import Duskrow.App
import Duskrow.Testing

ExchangeStory {
    id: test

    name: "Join"

    // A coordinator elsewhere has invited Tom; the invitation lies in the shared folder.
    function invited(properties) {
        const at = made(properties);
        at.other = at.world.otherProgramme("Elm flats", "Otto");
        at.link = at.other.invite("Tom", "grower", "2026-09-30", "");
        at.code = /code=([^&]*)/.exec(at.link)[1];
        at.other.exchange(at.world.sharedFolder());
        return at;
    }

    function startJoining(at) {
        show(at);
        tap(find(at.main.contentItem, "how"), "chip_join");
        tryVerify(() => findChild(at.main.contentItem, "code"));
        return at.main.contentItem;
    }

    function fromFolder(at, page) {
        tap(find(page, "from"), "chip_folder");
        paste(page, "folder", at.world.sharedFolder());
    }

    function test_aNewcomerTypesTenSigns() {
        const at = invited({ begun: false });
        const page = startJoining(at);
        type(page, "code", at.code.toLowerCase());
        fromFolder(at, page);
        tap(page, "join");
        tryCompare(at.world.app, "state", App.Open, 20000);
        compare(at.world.app.isJoined, true);
        compare(at.world.app.programme().name, "Elm flats");
        compare(at.world.app.programme().myName, "Tom");
        at.other.exchange(at.world.sharedFolder());
        at.world.exchange();
        const members = show(at, "members");
        tryCompare(members.model.members, "count", 2);
        verify(!find(members, "invite").visible, "a grower does not invite");
        at.world.restart();
        compare(at.world.app.state, App.Open, "the programme joined stands open after a restart");
        compare(at.world.app.programme().name, "Elm flats");
    }

    function test_theTextIsPasted() {
        const at = invited({ begun: false });
        const page = startJoining(at);
        paste(page, "code", at.link);
        fromFolder(at, page);
        tap(page, "join");
        tryCompare(at.world.app, "state", App.Open, 20000);
    }

    function test_theTextIsOpenedFromOutside() {
        const at = made({ begun: false, opened: "duskrow:join?code=7K2QDM4XWA&hub=https%3A%2F%2Fhub.example%3A8460" });
        show(at);
        const page = at.main.contentItem;
        tryVerify(() => findChild(page, "code"));
        compare(find(find(page, "hub"), "box").text, "https://hub.example:8460");
    }

    function test_withAFile() {
        const at = invited({ begun: false });
        const file = at.world.folder() + "/elm.dusk";
        at.other.writeFile(file);
        const page = startJoining(at);
        type(page, "code", at.code);
        tap(find(page, "from"), "chip_file");
        paste(page, "file", file);
        tap(page, "join");
        tryCompare(at.world.app, "state", App.Open, 20000);
    }

    function test_whatGoesWrong_data() {
        return [
            { tag: "a code nobody knows", code: "00000-00000", says: "Nobody knows this code here" },
            { tag: "no signal", code: "", hub: "127.0.0.1:9", says: "does not answer" },
            { tag: "no such folder", code: "", folder: "/nowhere", says: "is not there" }
        ];
    }

    function test_whatGoesWrong(row) {
        const at = invited({ begun: false });
        const page = startJoining(at);
        type(page, "code", row.code.length > 0 ? row.code : at.code);
        if (row.hub) {
            type(page, "hub", row.hub);
        } else {
            tap(find(page, "from"), "chip_folder");
            paste(page, "folder", row.folder ?? at.world.sharedFolder());
        }
        tap(page, "join");
        tryVerify(() => find(page, "trouble").visible, 20000);
        verify(find(page, "trouble").text.includes(row.says), find(page, "trouble").text);
        compare(at.world.app.state, App.Starting);
        verify(find(page, "join").enabled, "and one may try again");
    }

    function test_anInvitationThatIsPast() {
        const at = made({ begun: false });
        at.other = at.world.otherProgramme("Elm flats", "Otto");
        const link = at.other.invite("Tom", "grower", "2026-07-01", "");
        at.other.exchange(at.world.sharedFolder());
        const page = startJoining(at);
        paste(page, "code", link);
        fromFolder(at, page);
        tap(page, "join");
        tryVerify(() => find(page, "trouble").visible, 20000);
        compare(at.world.app.state, App.Starting);
    }

    function test_whatIsNoCodeSaysSo() {
        const at = made({ begun: false });
        const page = startJoining(at);
        tap(page, "join");
        verify(find(page, "code").error.length > 0);
        paste(page, "code", "this is no code at all");
        verify(find(page, "code").error.length > 0);
    }

    function test_aSeasonKeptAloneComesAlong() {
        const at = invited();
        const page = show(at, "join");
        compare(find(page, "along").checked, true);
        verify(find(page, "along").detail.includes("1 field, 1 trap, 1 visit"), find(page, "along").detail);
        type(page, "code", at.code);
        fromFolder(at, page);
        tap(page, "join");
        tryCompare(at.world.app, "isJoined", true, 20000);
        compare(at.world.app.state, App.Open);
        compare(at.world.recordsOf("trap"), [at.trap]);
        compare(at.world.recordsOf("visit"), [at.visit]);
        verify(at.world.fileText("programme.duskrow").length > 0, "the file before is still there");
        at.other.exchange(at.world.sharedFolder());
        at.world.exchange();
        at.other.exchange(at.world.sharedFolder());
        compare(at.other.visitsHere(), 1, "the others have it too");
        compare(at.main.place, "today");
    }
}
