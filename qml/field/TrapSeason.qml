// SPDX-License-Identifier: MIT
// The season of one trap: its catch so far, the chart of it and the same as lists, and what may be said of it.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Paint
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property string subject
    required property SeasonViewModel model
    property string shown: "chart"
    readonly property bool hasBand: root.model.bandLevel > 0

    signal opened(string route, string subject)

    title: root.model.title
    subtitle: root.model.subtitle

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    BigNumber {
        objectName: "total"
        value: root.model.total
        lines: root.model.meaning
        Layout.fillWidth: true
    }

    BandDots {
        objectName: "band"
        visible: root.hasBand
        band: root.model.bandLevel
        name: root.model.bandName
        Layout.fillWidth: true
    }

    Words {
        objectName: "bandMeaning"
        visible: root.hasBand
        text: root.model.bandSpan + ". " + root.model.bandMeaning
        kind: "small"
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "part"
        visible: root.model.isPart
        title: qsTr("Part of the flight only")
        text: root.model.standing
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "shown"
        label: qsTr("Show the season as")
        labelShown: false
        keys: ["chart", "visits", "weeks"]
        labels: [qsTr("Chart"), qsTr("Visits"), qsTr("Weeks")]
        chosen: root.shown
        onPicked: key => root.shown = key
        Layout.fillWidth: true
    }

    PictureItem {
        objectName: "chart"
        visible: root.shown === "chart"
        picture: root.model.chart(width, height, Theme.textScale, root.model.revision)
        dark: Theme.dark
        fontFamily: Theme.family
        Layout.fillWidth: true
        Layout.preferredHeight: Math.round(Math.min(width, 420) * 0.92)

        Accessible.role: Accessible.Graphic
        Accessible.name: picture.description
    }

    SeasonRows {
        objectName: "visits"
        visible: root.shown === "visits"
        rows: root.model.visits
        emptyText: qsTr("No counts yet")
        Layout.fillWidth: true
        onOpened: (route, subject) => root.opened(route, subject)
    }

    SeasonRows {
        objectName: "weeks"
        visible: root.shown === "weeks"
        rows: root.model.weeks
        emptyText: qsTr("No counts yet")
        Layout.fillWidth: true
    }

    Words {
        objectName: "likely"
        visible: text.length > 0
        text: root.model.likely
        Layout.fillWidth: true
    }

    Words {
        objectName: "standing"
        visible: text.length > 0 && !root.model.isPart
        text: root.model.standing
        Layout.fillWidth: true
    }

    // qmllint disable unqualified
    Each {
        model: root.model.remarks

        Words {
            required property string modelData
            text: modelData
            kind: "small"
            Layout.fillWidth: true
        }
    }

    // qmllint enable unqualified
    Words {
        objectName: "scouting"
        visible: text.length > 0
        text: root.model.scouting
        Layout.fillWidth: true
    }

    RuleLines {
        objectName: "rules"
        title: qsTr("What the rules say so far")
        lines: root.model.rules
        Layout.fillWidth: true
    }

    RuleLines {
        objectName: "fieldRules"
        title: qsTr("What counts in the crop")
        lines: root.model.fieldRules
        Layout.fillWidth: true
    }

    Words {
        objectName: "caution"
        text: root.model.caution
        kind: "strong"
        Layout.fillWidth: true
    }

    PairCard {
        objectName: "pair"
        labels: root.model.pairLabels
        totals: root.model.pairTotals
        Layout.fillWidth: true
    }

    CalendarCard {
        Layout.fillWidth: true
        onClicked: root.opened("pestCalendar", root.subject)
    }

    ListCard {
        objectName: "life"
        title: qsTr("Life of this trap")
        subtitle: qsTr("Raised, lure and strip, moved, lent, ended")
        Layout.fillWidth: true
        onClicked: root.opened("life", root.subject)
    }

    Words {
        objectName: "protocol"
        text: root.model.protocolLine
        kind: "soft"
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "scout"
        visible: root.model.scouting.length > 0
        text: qsTr("Scout this field for larvae")
        Layout.fillWidth: true
        onClicked: root.opened("walk", root.subject)
    }

    pinned: [
        ActButton {
            objectName: "countNow"
            visible: root.model.next === "count"
            text: qsTr("Count now")
            Layout.fillWidth: true
            onClicked: root.opened("visit", root.subject)
        },
        ActButton {
            objectName: "takeDown"
            visible: root.model.next === "takeDown"
            text: qsTr("Take the trap down")
            Layout.fillWidth: true
            onClicked: root.opened("life", "end:" + root.subject)
        }
    ]
}
