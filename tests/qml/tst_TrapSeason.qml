// SPDX-License-Identifier: MIT
// The season of one trap as its keeper reads it, against sums done by hand.
import QtQuick
import QtTest
import Duskrow.Testing
import Duskrow.Theme

TestCase {
    id: test

    name: "TrapSeason"
    when: windowShown

    Component {
        id: worlds
        World {}
    }

    function cleanup() {
        Theme.dark = false;
        Theme.textScale = 1;
    }

    // A world that stands on a day, with a trap set up on 3 June.
    function made(today, setDay) {
        const world = createTemporaryObject(worlds, test, { today: today });
        const trap = world.addTrap("Slough corner", "bertha 1", setDay ?? "2026-06-03", 52.1, -106.6);
        return { world, trap };
    }

    function page(made, width, height) {
        const main = made.world.openWindow(width ?? 390, height ?? 844, "season", made.trap);
        waitForRendering(main.contentItem);
        const found = findChild(main.contentItem, "pages").currentItem;
        verify(found);
        return found;
    }

    function shown(page, key) {
        mouseClick(findChild(page, "chip_" + key));
        return findChild(page, key);
    }

    function rows(list) {
        const found = [];
        for (let i = 0; findChild(list, "row" + i); ++i) {
            const row = findChild(list, "row" + i);
            found.push([row.title, row.rightText, row.subtitle.replace(/\u00a0/g, " ")]);
        }
        return found;
    }

    function look(page, name) {
        if (!folder)
            return;
        const shot = grabImage(page);
        shot.save(folder + "/season_" + name + ".png");
    }

    property string folder: ""

    function test_aMissedWeekIsALongerIntervalAndTheTotalStands() {
        const at = made("2026-07-14");
        at.world.addCount(at.trap, "2026-06-09", 12);
        at.world.addCount(at.trap, "2026-06-16", 30);
        at.world.addCount(at.trap, "2026-06-30", 140);
        at.world.addCount(at.trap, "2026-07-07", 77);
        const season = page(at);
        compare(findChild(season, "total").value, "259");
        compare(findChild(season, "total").lines.join(), "moths so far,flight rising");
        const list = shown(season, "visits");
        verify(list.visible);
        compare(rows(list), [
                    ["Tuesday 7 July", "77 moths", "7 nights · 11.0 a night · 259 so far"],
                    ["Tuesday 30 June", "140 moths", "14 nights · 10.0 a night · 182 so far\none count over 14 nights"],
                    ["Tuesday 16 June", "30 moths", "7 nights · 4.3 a night · 42 so far"],
                    ["Tuesday 9 June", "12 moths", "6 nights · 2.0 a night · 12 so far"]
                ]);
        verify(!findChild(season, "band").visible, "a catch so far has no band");
        verify(findChild(season, "countNow").visible);
    }
}
