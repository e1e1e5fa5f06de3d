// SPDX-License-Identifier: MIT
// Rows that go while the layout they stood in gets another size. The sanitized program overwrites what is freed, so that an
// item arranged after its end ends the program.
import QtQuick
import QtQuick.Layouts
import QtTest
import Duskrow.Parts

TestCase {
    id: test

    name: "Each"
    when: windowShown

    Component {
        id: pages

        Item {
            id: page

            property int rows: 9
            readonly property Item column: column

            width: 300
            height: 400

            ColumnLayout {
                id: column
                width: parent.width

                Each {
                    model: page.rows

                    RowLayout {
                        id: line
                        required property int index
                        Layout.fillWidth: true

                        Each {
                            model: line.index + page.rows

                            Item {
                                implicitHeight: 10
                                Layout.fillWidth: true
                            }
                        }
                    }
                }
            }
        }
    }

    function test_theLayoutForgetsWhatIsGone() {
        const page = createTemporaryObject(pages, test);
        for (let turn = 0; turn < 100; ++turn) {
            page.rows = 1 + turn % 7;
            wait(0); // what was taken out is destroyed
            page.width = 200 + turn;
        }
        page.rows = 3;
        tryCompare(page.column, "implicitHeight", 30 + 2 * page.column.spacing);
        page.rows = 0;
        tryCompare(page.column, "implicitHeight", 0);
    }
}
