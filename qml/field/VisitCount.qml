// SPDX-License-Identifier: MIT
// The count: a huge number, what it means, and the area under the thumb.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

VisitFrame {
    id: root

    readonly property VisitCountViewModel model: root.visit.count
    readonly property bool couldNot: root.model.noCountReason.length > 0
    readonly property bool tallies: !root.couldNot && !(root.model.isEstimate && root.model.bin === "pest")

    // A low screen, where number, pad and keys still have to stand together.
    readonly property bool low: root.height < 700
    readonly property bool large: Theme.textScale > 1.4

    signal heavyWanted
    signal guideWanted

    function goOn(): void {
        if (root.model.isCounted || root.couldNot)
            root.visit.next();
        else
            zeroSheet.open();
    }

    fillsPage: root.tallies
    spacing: root.low ? Theme.gapSmall : Theme.gap

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    CouldNotCountCard {
        visible: root.couldNot
        words: root.model.noCountWords
        onAgain: root.model.countAfterAll()
        Layout.fillWidth: true
    }

    BigNumber {
        objectName: "number"
        visible: !root.couldNot
        value: root.model.shown
        caption: root.model.caption
        lines: root.model.lines
        Layout.fillWidth: true
    }

    BinRow {
        objectName: "bins"
        visible: !root.couldNot
        chosen: root.model.bin
        counts: root.model.binCounts
        onPicked: key => root.model.bin = key
        Layout.fillWidth: true
    }

    EstimateCard {
        visible: !root.couldNot && !root.tallies
        words: root.model.estimate
        onChangeWanted: root.heavyWanted()
        onCountWanted: root.model.countEach()
        Layout.fillWidth: true
    }

    TallyPad {
        objectName: "pad"
        visible: root.tallies
        label: root.model.oneMore
        // In large type the number above may have scrolled away.
        hint: root.large ? qsTr("%1 counted").arg(root.model.shown) : root.low ? "" : qsTr("tap anywhere here, or a key")
        focus: true
        onStepped: by => root.model.add(by)
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredHeight: Layout.minimumHeight
        Layout.minimumHeight: root.large ? implicitHeight : root.low ? 92 : 148
        Layout.maximumHeight: 320
    }

    TallyKeys {
        objectName: "tallyKeys"
        visible: root.tallies
        label: root.model.oneMore
        canTakeAway: root.model.canTakeAway
        onStepped: by => root.model.add(by)
        onKeypadAsked: keypad.open()
        Layout.fillWidth: true
    }

    Flow {
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        PlainButton {
            objectName: "undo"
            visible: root.model.canUndo
            text: qsTr("Undo")
            horizontalPadding: Theme.gap
            onClicked: root.model.undo()
        }

        PlainButton {
            objectName: "none"
            visible: root.model.isUntouched && !root.couldNot
            text: qsTr("None caught")
            horizontalPadding: Theme.gap
            onClicked: zeroSheet.open()
        }

        PlainButton {
            objectName: "guide"
            visible: !root.couldNot && root.visit.guide.hasMarks
            text: qsTr("Guide")
            horizontalPadding: Theme.gap
            Accessible.name: qsTr("Guide: the marks to look for")
            onClicked: root.guideWanted()
        }

        PlainButton {
            objectName: "other"
            text: qsTr("Other")
            horizontalPadding: Theme.gap
            Accessible.name: qsTr("Other: could not count, a heavy catch, start over")
            onClicked: otherSheet.open()
        }
    }

    Words {
        objectName: "orderHint"
        visible: root.model.isUntouched && !root.couldNot
        text: qsTr("Tip the catch into a tray, standing upwind. Gloves off before you touch the phone.")
        kind: "soft"
        Layout.fillWidth: true
    }

    Words {
        objectName: "longInterval"
        visible: text.length > 0 && !root.couldNot
        text: root.model.longInterval
        kind: "small"
        Layout.fillWidth: true
    }

    Words {
        objectName: "caution"
        text: root.model.caution
        kind: "soft"
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "next"
            text: root.visit.trapSeen ? qsTr("Next: look at the trap") : qsTr("Next: look it over")
            Layout.fillWidth: true
            onClicked: root.goOn()
        }
    ]

    KeypadSheet {
        id: keypad
        objectName: "keypadSheet"
        label: root.model.oneMore
        onAccepted: value => root.model.type(value)
    }

    AskSheet {
        id: zeroSheet
        objectName: "zeroSheet"
        title: root.model.zeroQuestion
        text: qsTr("Zero is a count: the trap worked, and the pest was not in it. It is not the same as a trap that could not be counted.")
        yesText: qsTr("Yes, none: keep it as zero")
        otherText: qsTr("It could not be counted")
        safeText: qsTr("Go on counting")
        onYes: root.model.noneCaught()
        onOther: couldNotSheet.open()
    }

    CouldNotCountSheet {
        id: couldNotSheet
        objectName: "couldNotSheet"
        keys: root.model.reasonKeys
        labels: root.model.reasonNames
        onPicked: reason => root.model.couldNotCount(reason)
    }

    VisitOtherSheet {
        id: otherSheet
        objectName: "otherSheet"
        canCount: !root.couldNot
        correcting: root.visit.isCorrection
        onCouldNot: couldNotSheet.open()
        onHeavy: root.heavyWanted()
        onOver: root.visit.startOver()
    }
}
