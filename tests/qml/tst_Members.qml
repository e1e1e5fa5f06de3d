// SPDX-License-Identifier: MIT
// Members and devices by taps and keys: inviting, a lost phone, a second main device, who leaves, who borrows.
import QtQuick
import QtTest
import Duskrow.Testing

ExchangeStory {
    id: test

    name: "Members"

    function memberPage(at, name) {
        const page = show(at, "member", at.world.memberId(name));
        tryCompare(page.model, "name", name);
        return page;
    }

    function test_aCodeIsMadeAndHandedOn() {
        const at = made();
        const page = show(at, "members");
        tryCompare(page.model.members, "count", 1);
        tap(page, "invite");
        const form = pageOn(at);
        tap(form, "make");
        tryVerify(() => find(form, "trouble").visible, 5000, "without a name nobody is invited");
        type(form, "name", "Ida");
        tap(find(form, "role"), "chip_agronomist");
        tap(form, "make");
        tryVerify(() => form.isDone, 20000);
        verify(/^[0-9A-HJKMNP-TV-Z]{5}-[0-9A-HJKMNP-TV-Z]{5}$/.test(form.model.code), form.model.code);
        compare(find(form, "code").text, form.model.code);
        const picture = find(form, "picture");
        tryVerify(() => picture.width > 100);
        compare(picture.width % form.model.pictureUnits, 0, "a whole number of pixels a module");
        verify(form.model.link.startsWith("duskrow:join?code="));
        tap(form, "copy");
        compare(find(form, "copy").text, "Copied");
        at.world.listenToUrls("mailto");
        tap(form, "mail");
        compare(at.world.openedUrls().length, 1);
        verify(at.world.openedUrls()[0].includes(form.model.code.replace("-", "-")));
        tap(form, "done");
        const list = pageOn(at);
        tryCompare(list.model.members, "count", 2);
        tryCompare(list.model.invited, "count", 1);
        compare(at.world.fieldOf("member", at.world.memberId("Ida"), "role"), "agronomist");
        verify(find(list, "secondRoot").visible, "a second main device is urged");
        const me = show(at, "member", at.world.memberId("Wren"));
        tryCompare(me.model.devices, "count", 1);
        verify(find(me, "device0").flags.join().includes("Main device"), "the others see whose the first device is");
        tryCompare(find(me, "device0"), "title", "first device");
    }

    function test_anInvitationIsTakenBack() {
        const at = made();
        const form = show(at, "invite");
        type(form, "name", "Ida");
        tap(form, "make");
        tryVerify(() => form.isDone, 20000);
        const list = show(at, "members");
        tryCompare(list.model.invited, "count", 1);
        tap(find(list, "invited0"), "takeBack");
        tryCompare(list.model.invited, "count", 0);
    }

    function test_aLostPhoneIsEnded() {
        const at = made();
        const ida = at.world.joinAnother("Ida", "coordinator", "phone");
        const page = memberPage(at, "Ida");
        tryCompare(page.model.devices, "count", 1);
        const device = find(page, "device0");
        compare(device.title, "phone");
        verify(!device.struck);
        tap(device, "end");
        const ask = findChild(device, "askEnd");
        tryVerify(() => ask.opened);
        findChild(ask.contentItem, "yes").clicked();
        tryVerify(() => find(page, "device0").struck);
        at.world.exchange();
        ida.addCount(at.trap, at.site, "2026-07-13", 12);
        ida.exchange(at.world.sharedFolder());
        at.world.exchange();
        compare(at.world.recordsOf("visit").length, 1, "what it wrote afterwards does not count");
    }

    function test_aSecondMainDevice() {
        const at = made();
        at.world.joinAnother("Ida", "coordinator", "laptop");
        const page = memberPage(at, "Ida");
        tryCompare(page.model.devices, "count", 1);
        verify(!find(page, "device0").flags.join().includes("Main device"));
        tap(find(page, "device0"), "makeRoot");
        tryVerify(() => find(page, "device0").flags.join().includes("Main device"));
        const list = show(at, "members");
        tryCompare(list.model.members, "count", 2);
        verify(!find(list, "secondRoot").visible);
    }

    function test_aMemberLeavesAndAnotherTakesPartDifferently() {
        const at = made();
        at.world.joinAnother("Ida", "grower", "phone");
        const page = memberPage(at, "Ida");
        tap(find(page, "role"), "chip_agronomist");
        tryCompare(page.model, "role", "agronomist");
        tap(page, "leave");
        tryVerify(() => page.model.lastDay.length > 0);
        compare(at.world.fieldOf("member", at.world.memberId("Ida"), "until_day"), "2026-07-14");
    }

    function test_anAgronomistIsGivenAField() {
        const at = made();
        at.world.joinAnother("Ana", "agronomist", "phone");
        const page = memberPage(at, "Ana");
        tryCompare(page.model.otherSites, "count", 1);
        const field = find(page, "otherSite0");
        compare(field.text, "Slough corner");
        compare(field.detail, "kept by Wren");
        compare(field.checked, false);
        tap(page, "otherSite0");
        tryVerify(() => at.world.recordsOf("assignment").length === 1);
        tryVerify(() => find(page, "otherSite0").checked && find(page, "otherSite0").enabled);
        tap(page, "otherSite0");
        tryVerify(() => at.world.recordsOf("assignment").length === 0);
        tryVerify(() => !find(page, "otherSite0").checked && find(page, "otherSite0").enabled);
        tap(page, "otherSite0");
        tryVerify(() => at.world.recordsOf("assignment").length === 1, 5000, "the same one stands again");
    }

    function test_anInvitationSaysHowFarItGot() {
        const at = made();
        let form = show(at, "invite");
        type(form, "name", "Ida");
        tap(form, "make");
        tryVerify(() => form.isDone, 20000);
        verify(!find(form, "reach").visible, "without a way there is nothing to wait for");
        const ways = show(at, "exchange");
        chooseFolder(ways, at.world.sharedFolder());
        tryCompare(ways.model, "here", 0);
        form = show(at, "invite");
        type(form, "name", "Tom");
        tap(form, "make");
        tryVerify(() => form.isDone, 20000);
        tryCompare(form.model, "isKnownOutside", true);
        verify(find(form, "reach").visible);
        verify(find(form, "reach").text.includes("shared folder"), find(form, "reach").text);
    }

    function test_aTrapIsLentToAMember() {
        const at = made();
        const tom = at.world.joinAnother("Tom", "grower", "phone");
        const page = show(at, "life", at.trap);
        page.model.begin("lend");
        tryVerify(() => findChild(at.main.contentItem, "member"));
        const form = pageOn(at);
        tap(find(form, "member"), "chip_" + at.world.memberId("Tom"));
        verify(!find(form, "borrower").visible);
        const until = find(find(form, "until"), "box");
        until.forceActiveFocus();
        until.selectAll();
        for (const c of "2026-07-31")
            keyClick(c);
        tap(form, "keep");
        tryVerify(() => at.world.recordsOf("loan").length === 1);
        const loan = at.world.recordsOf("loan")[0];
        compare(at.world.fieldOf("loan", loan, "member"), at.world.memberId("Tom"));
        compare(at.world.fieldOf("loan", loan, "borrower"), "Tom");
        at.world.exchange();
        tom.exchange(at.world.sharedFolder());
        tom.addCount(at.trap, at.site, "2026-07-15", 5);
        tom.exchange(at.world.sharedFolder());
        at.world.exchange();
        compare(at.world.recordsOf("visit").length, 2, "what he counts while he has it is rightful");
    }
}
