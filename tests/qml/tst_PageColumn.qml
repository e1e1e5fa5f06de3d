// SPDX-License-Identifier: MIT
// The column of a page while its items come and go.
import QtQuick
import QtQuick.Layouts
import QtTest
import Duskrow.Parts

TestCase {
    id: test

    name: "PageColumn"
    when: windowShown

    Component {
        id: pages

        Item {
            id: page

            property int rows: 3
            property bool isPinned: true
            readonly property Item column: column

            width: 300
            height: 400

            PageColumn {
                id: column
                width: parent.width
                fills: true
                room: page.isPinned ? 350 : 400

                Each {
                    model: page.rows

                    Item {
                        implicitHeight: 30
                        Layout.fillWidth: true
                    }
                }

                Item {
                    objectName: "filler"
                    Layout.fillHeight: true
                }
            }
        }
    }

    function test_itFillsTheRoomAndGrowsBeyondIt() {
        const page = createTemporaryObject(pages, test);
        tryCompare(page.column, "height", 350);
        page.isPinned = false;
        tryCompare(page.column, "height", 400);
        page.rows = 40;
        tryVerify(() => page.column.height > 40 * 30);
        page.rows = 2;
        tryCompare(page.column, "height", 400);
        page.column.fills = false;
        compare(page.column.height, page.column.implicitHeight);
    }

    // Each time the room changes while destroyed rows still stand in the layout.
    function test_rowsThatGoWhileTheRoomChanges() {
        const page = createTemporaryObject(pages, test);
        for (let turn = 0; turn < 200; ++turn) {
            page.rows = turn % 2 ? 9 : 1;
            wait(0); // what was taken out is destroyed
            page.rows = turn % 3;
            page.isPinned = !page.isPinned;
        }
        page.rows = 0;
        page.isPinned = false;
        tryCompare(page.column, "height", 400);
    }
}
