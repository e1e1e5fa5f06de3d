// SPDX-License-Identifier: MIT
import QtQuick
import QtTest
import Duskrow.Theme

TestCase {
    name: "Theme"

    function channel(v) {
        return v <= 0.03928 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    // Relative luminance and contrast as WCAG 2.1 defines them.
    function luminance(colour) {
        return 0.2126 * channel(colour.r) + 0.7152 * channel(colour.g) + 0.0722 * channel(colour.b);
    }

    function contrast(one, two) {
        const a = luminance(one);
        const b = luminance(two);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    function test_wordsStandOutFromTheirGround_data() {
        const rows = [];
        for (const dark of [false, true]) {
            for (const ink of ["ink", "inkSoft", "inkError"]) {
                for (const ground of ["paper", "card", "groundNote", "groundCaution", "cardPressed"])
                    rows.push({ tag: ink + " on " + ground + (dark ? ", night" : ", day"), dark, ink, ground, least: 4.5 });
            }
            for (const [ink, ground] of [["actInk", "act"], ["actInkSoft", "act"], ["actInk", "actPressed"], ["nextInk", "next"],
                    ["nextInk", "nextPressed"]])
                rows.push({ tag: ink + " on " + ground + (dark ? ", night" : ", day"), dark, ink, ground, least: 4.5 });
            for (const ground of ["paper", "card"])
                rows.push({ tag: "edge on " + ground + (dark ? ", night" : ", day"), dark, ink: "edge", ground, least: 3 });
        }
        return rows;
    }

    function test_wordsStandOutFromTheirGround(row) {
        Theme.dark = row.dark;
        const found = contrast(Theme[row.ink], Theme[row.ground]);
        Theme.dark = false;
        verify(found >= row.least, found.toFixed(2) + " is less than " + row.least);
    }

    function test_dotsStandOutFromTheirBand() {
        for (let band = 0; band < 4; ++band)
            verify(contrast(Theme.bandInks[band], Theme.bands[band]) >= 3, "band " + (band + 1));
    }

    function test_largeTypeIsTwiceAsLarge() {
        const before = [Theme.typeBody, Theme.typeSmall, Theme.typeTitle];
        verify(Theme.typeSmall >= 16);
        Theme.textScale = 2;
        compare([Theme.typeBody, Theme.typeSmall, Theme.typeTitle], before.map(size => 2 * size));
        Theme.textScale = 1;
    }
}
