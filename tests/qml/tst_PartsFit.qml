// SPDX-License-Identifier: MIT
// Every part, in each size, by day and by night, in small and large type: readable, reachable, with a name.
import QtQuick
import QtTest
import Duskrow.Theme

Item {
    id: stage

    width: 1280
    height: 900

    Walk {
        id: walk
    }

    TestCase {
        id: test

        name: "PartsFit"
        when: windowShown

        function cleanup() {
            Theme.dark = false;
            Theme.textScale = 1;
        }

        function test_page_data() {
            const rows = [];
            for (const page of ["Fields", "Tally", "Today", "Stake", "Pictures", "SetUp"]) {
                for (const [width, height] of [[360, 640], [390, 844], [1280, 800], [640, 360], [320, 568]]) {
                    for (const textScale of [1, 1.3, 2])
                        rows.push({ tag: page + " " + width + "x" + height + " at " + textScale, page, width, height, textScale });
                }
            }
            return rows;
        }

        function test_page(row) {
            const type = Qt.createComponent("gallery/Page" + row.page + ".qml");
            compare(type.errorString(), "");
            const page = createTemporaryObject(type, stage, { dark: false, textScale: row.textScale, width: row.width,
                    height: row.height });
            waitForRendering(page);
            compare(walk.lasting(page, wait).join("; "), "");
        }

        // A walk that finds nothing anywhere would prove nothing.
        function test_theWalkSeesWhatIsWrong() {
            const text = createTemporaryQmlObject('import QtQuick; Rectangle { width: 100; height: 20; radius: 2;'
                + 'Text { text: "A long line of words"; width: 30; elide: Text.ElideRight; font.pixelSize: 12 } }', stage);
            compare(walk.complaints(text).length, 2);
            const pair = createTemporaryQmlObject('import QtQuick; Item { width: 300; height: 40;'
                + 'Text { text: "One sentence"; font.pixelSize: 16 } Text { text: "and another"; x: 30; font.pixelSize: 16 } }', stage);
            compare(walk.complaints(pair).join(""), "“One sentence” runs into “and another”");
        }
    }
}
