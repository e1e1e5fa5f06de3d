// SPDX-License-Identifier: MIT
// The life of a trap at a glance: how it stands, what may be done, what was done, how it was set up.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property LifeViewModel model

    signal opened(string route, string subject)

    // All of one width and, side by side, of one height.
    component Act: PlainButton {
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredWidth: 1
    }

    focus: true
    title: root.model.title
    subtitle: qsTr("Life of this trap")

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "lent"
        visible: text.length > 0
        text: root.model.lent
        action: qsTr("It is back")
        Layout.fillWidth: true
        onActed: root.model.takeBack()
    }

    NoticeBar {
        objectName: "ended"
        visible: text.length > 0
        text: root.model.ended
        action: root.model.ended.length > 0 ? qsTr("It still stands") : ""
        Layout.fillWidth: true
        onActed: lettingRunOn.open()
    }

    GridLayout {
        objectName: "acts"
        visible: root.model.isRunning
        columns: Theme.textScale < 1.5 ? 2 : 1
        columnSpacing: Theme.gapSmall
        rowSpacing: Theme.gapSmall
        Layout.fillWidth: true

        Act {
            objectName: "raise"
            text: qsTr("Raise it")
            onClicked: root.model.begin("raise")
        }

        Act {
            objectName: "lure"
            text: qsTr("New lure")
            onClicked: root.model.begin("lure")
        }

        Act {
            objectName: "strip"
            visible: root.model.hasStrip
            text: qsTr("New strip")
            onClicked: root.model.begin("strip")
        }

        Act {
            objectName: "move"
            text: qsTr("Move it")
            onClicked: root.model.begin("move")
        }

        Act {
            objectName: "lend"
            text: qsTr("Lend it")
            onClicked: root.model.begin("lend")
        }

        Act {
            objectName: "replace"
            text: qsTr("Replace it")
            onClicked: replacing.open()
        }
    }

    SectionLabel {
        visible: root.model.isFound
        text: qsTr("What was done")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.timeline

        ListCard {
            required property int index
            required property string besides
            required property string detail
            required property string route
            required property string subject
            objectName: "done" + index
            subtitle: detail
            rightText: besides
            Layout.fillWidth: true
            onClicked: root.opened(route, subject)
        }
    }

    SectionLabel {
        visible: root.model.isFound
        text: qsTr("Set-up")
        Layout.fillWidth: true
    }

    Card {
        visible: root.model.isFound
        Layout.fillWidth: true

        Each {
            model: root.model.facts

            FactRow {
                required property int index
                required property string title
                required property string besides
                objectName: "fact" + index
                label: title
                value: besides
                Layout.fillWidth: true
            }
        }
    }

    PlainButton {
        objectName: "correct"
        visible: root.model.isFound
        text: qsTr("Correct the trap")
        Layout.fillWidth: true
        onClicked: root.opened("correct", "trap/" + root.model.trap)
    }

    PlainButton {
        objectName: "correctSite"
        visible: root.model.site.length > 0
        text: qsTr("Correct the field")
        Layout.fillWidth: true
        onClicked: root.opened("correct", "site/" + root.model.site)
    }

    PlainButton {
        objectName: "siteHistory"
        visible: root.model.site.length > 0
        text: qsTr("History of the field")
        Layout.fillWidth: true
        onClicked: root.opened("history", "site/" + root.model.site)
    }

    AskSheet {
        id: replacing
        objectName: "replaceSheet"
        title: qsTr("A new trap at the same spot?")
        text: qsTr("This one ends today and keeps its count; the new one starts at zero. Count what is in it first.")
        yesText: qsTr("End this one, set up the new one")
        safeText: qsTr("Not now")
        onYes: root.model.replace()
    }

    AskSheet {
        id: lettingRunOn
        objectName: "runOnSheet"
        title: qsTr("Does it still stand in the field?")
        text: qsTr("Then its end is taken back, and its counts go on. The history keeps both.")
        yesText: qsTr("Yes, it still stands")
        safeText: qsTr("No, it ended")
        onYes: root.model.letRunOn()
    }

    pinned: [
        PlainButton {
            objectName: "end"
            visible: root.model.isRunning
            text: qsTr("End it")
            Layout.fillWidth: true
            onClicked: root.model.begin("end")
        },
        ActButton {
            objectName: "finish"
            visible: root.model.isUnfinished
            text: qsTr("Finish taking it down")
            Layout.fillWidth: true
            onClicked: root.model.begin("end")
        }
    ]
}
