// SPDX-License-Identifier: MIT
// The measure of contrast itself.
import QtQuick
import QtTest

TestCase {
    id: test

    name: "Contrast"
    visible: true
    width: 400
    height: 400

    Contrast {
        id: contrast
    }

    Component {
        id: paleWords
        Rectangle {
            width: 100
            height: 40
            color: "white"
            Text {
                text: "too pale"
                color: "#999999"
            }
        }
    }

    function test_paleWordsAreFound() {
        const page = createTemporaryObject(paleWords, test);
        compare(contrast.complaints(page).length, 1);
    }

    function test_theContrastOfBlackOnWhiteIsKnown() {
        fuzzyCompare(contrast.ratio(Qt.rgba(0, 0, 0, 1), Qt.rgba(1, 1, 1, 1)), 21, 0.01);
        fuzzyCompare(contrast.ratio(Qt.rgba(0.4667, 0.4667, 0.4667, 1), Qt.rgba(1, 1, 1, 1)), 4.48, 0.01);
    }
}
