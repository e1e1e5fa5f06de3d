// SPDX-License-Identifier: MIT
import QtQuick
import QtQuick.Layouts
import QtTest
import Duskrow.Parts

Item {
    id: stage

    width: 1280
    height: 800

    Component {
        id: page
        ScreenFrame {
            title: "Slough corner"
            subtitle: "8 m away"
            pinned: ActButton {
                objectName: "next"
                text: "Next"
                Layout.fillWidth: true
            }

            Repeater {
                model: 12

                FieldText {
                    required property int index
                    objectName: "field" + index
                    label: "Field " + index
                    Layout.fillWidth: true
                }
            }
        }
    }
    Component {
        id: growing
        ScreenFrame {
            title: "Count"
            fillsPage: true

            TallyPad {
                objectName: "pad"
                label: "One more"
                Layout.fillWidth: true
                Layout.fillHeight: true
            }
        }
    }
    Component {
        id: stake
        StakePicture {
            width: 320
            height: 300
            description: "The stake"
        }
    }
    SignalSpy {
        id: back
        signalName: "back"
    }

    TestCase {
        name: "PartsFrame"
        when: windowShown

        function make(type, width, height) {
            const frame = createTemporaryObject(type, stage, { width, height });
            waitForRendering(frame);
            back.clear();
            back.target = frame;
            return frame;
        }

        function test_theFocusedFieldIsSeen() {
            const frame = make(page, 360, 640);
            const scroll = findChild(frame, "pageScroll");
            findChild(findChild(frame, "field0"), "box").forceActiveFocus();
            for (let i = 1; i < 12; ++i) {
                keyClick(Qt.Key_Tab);
                const box = findChild(findChild(frame, "field" + i), "box");
                verify(box.activeFocus, i);
                const y = box.mapToItem(scroll, 0, 0).y;
                verify(y >= 0 && y + box.height <= scroll.height, i + " stands at " + y);
            }
            verify(scroll.contentY > 0);
            frame.scrollToTop();
            compare(scroll.contentY, 0);
        }

        function test_theWayBack() {
            const frame = make(page, 360, 640);
            mouseClick(findChild(frame, "back"));
            compare(back.count, 1);
            findChild(frame, "back").forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Return);
            compare(back.count, 2);
            keyClick(Qt.Key_Escape);
            compare(back.count, 3);
            frame.canGoBack = false;
            keyClick(Qt.Key_Escape);
            compare(back.count, 3);
            verify(!findChild(frame, "back").visible);
        }

        function test_wideWindowsKeepAReadableColumn_data() {
            return [{ tag: "phone", width: 360, column: 320 }, { tag: "wide", width: 1280, column: 520 }];
        }

        function test_wideWindowsKeepAReadableColumn(row) {
            const frame = make(page, row.width, 800);
            compare(findChild(frame, "field0").width, row.column);
            compare(findChild(frame, "next").width, row.column);
            const left = findChild(frame, "field0").mapToItem(frame, 0, 0).x;
            compare(left, (row.width - row.column) / 2);
        }

        function test_theHeadGivesWayOnALowScreen() {
            const low = make(page, 640, 360);
            verify(low.compact);
            verify(findChild(low, "pageScroll").height > 250);
            verify(!make(page, 360, 640).compact);
        }

        function test_contentFillsThePageWhereAsked() {
            const frame = make(growing, 390, 844);
            const pad = findChild(frame, "pad");
            verify(pad.height > 600, pad.height);
        }

        function test_theStakeIsToScale() {
            const picture = createTemporaryObject(stake, stage, { entranceMm: 1180, canopyMm: 950 });
            const perMm = picture.perMm;
            fuzzyCompare(picture.canopyY - picture.entranceY, 230 * perMm, 0.01);
            fuzzyCompare(picture.yOf(0) - picture.canopyY, 950 * perMm, 0.01);
            verify(!picture.hidden);
            picture.canopyMm = 1180;
            verify(picture.hidden);
            picture.canopyKnown = false;
            verify(!picture.hidden);
        }

        function test_theStakeFitsWhateverItsHeight_data() {
            return [{ tag: "low", entrance: 100 }, { tag: "usual", entrance: 1000 }, { tag: "absurd", entrance: 100000 }];
        }

        function test_theStakeFitsWhateverItsHeight(row) {
            const picture = createTemporaryObject(stake, stage, { entranceMm: row.entrance, canopyMm: 300 });
            verify(picture.entranceY > 0);
            verify(picture.entranceY < picture.yOf(0));
        }
    }
}
