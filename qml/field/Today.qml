// SPDX-License-Identifier: MIT
// What is due, nearest first, and what comes later.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property TodayViewModel model
    required property QuestionsViewModel questions

    signal opened(string route, string subject)
    signal placeWanted(string key)

    title: root.model.heading
    canGoBack: false
    fillsPage: true
    above: root.model.date
    onVisibleChanged: {
        if (root.visible)
            root.model.refresh();
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    QuestionCard {
        questions: root.questions
        Layout.fillWidth: true
        onOpened: (route, subject) => root.opened(route, subject)
    }

    DraftCards {
        drafts: root.model.drafts
        Layout.fillWidth: true
        onOpened: (route, subject) => root.opened(route, subject)
    }

    EmptyState {
        objectName: "noSeason"
        visible: root.model.isKnown && !root.model.hasSeason
        title: qsTr("A new season: %1").arg(root.model.year)
        text: qsTr("The same people, week and protocols. Fields are new, since the crop rotates.")
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapWide
    }

    EmptyState {
        objectName: "noTraps"
        visible: root.model.isKnown && root.model.hasSeason && !root.model.hasTraps
        title: qsTr("No trap yet")
        text: qsTr("Set one up, and what is due there stands here each week.")
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapWide

        TrapPicture {
            kind: root.model.trapShape
            description: qsTr("A trap")
            Layout.alignment: Qt.AlignHCenter
        }
    }

    ActCard {
        objectName: "actCard"
        visible: root.model.hasAct
        title: root.model.actTitle
        text: root.model.actReason
        also: root.model.actAlso
        alsoWhy: root.model.actAlsoWhy
        actText: root.model.actText
        Layout.fillWidth: true
        onActed: root.opened(root.model.actRoute, root.model.actTrap)
    }

    PlainButton {
        objectName: "round"
        visible: root.model.hasRound
        text: qsTr("The day's round")
        Layout.fillWidth: true
        onClicked: root.opened("round", "")
    }

    Each {
        objectName: "dueStops"
        model: root.model.due

        StopCard {
            objectName: "dueStop"
            Layout.fillWidth: true
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    SectionLabel {
        objectName: "laterLabel"
        visible: root.model.thisWeek.count > 0 || report.visible
        text: qsTr("Later this week")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.thisWeek

        StopCard {
            objectName: "laterStop"
            Layout.fillWidth: true
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    Card {
        id: report
        objectName: "report"
        visible: root.model.reportTitle.length > 0
        spacing: Theme.gapTiny
        Layout.fillWidth: true

        Words {
            objectName: "reportTitle"
            text: root.model.reportTitle
            kind: "strong"
            Layout.fillWidth: true
        }

        Words {
            objectName: "reportLine"
            text: root.model.reportLine
            kind: "soft"
            Layout.fillWidth: true
        }
    }

    SectionLabel {
        visible: root.model.afterwards.count > 0
        text: qsTr("After that")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.afterwards

        StopCard {
            objectName: "afterStop"
            Layout.fillWidth: true
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    PlainButton {
        objectName: "more"
        visible: text.length > 0
        text: root.model.moreLine
        Layout.fillWidth: true
        onClicked: root.placeWanted("traps")
    }

    Item {
        Layout.fillHeight: true
    }

    NewsCard {
        news: root.model.news
        newsTitle: root.model.newsTitle
        newsLine: root.model.newsLine
        Layout.fillWidth: true
        onOpened: (route, subject) => root.opened(route, subject)
    }

    ListCard {
        id: travel
        objectName: "travel"
        visible: title.length > 0
        title: root.model.travelLine
        subtitle: root.model.keptLine
        Layout.fillWidth: true
        onClicked: root.opened("exchange", "")
    }

    Words {
        objectName: "keptLine"
        visible: text.length > 0 && !travel.visible
        text: root.model.keptLine
        kind: "soft"
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "beginSeason"
            visible: root.model.isKnown && !root.model.hasSeason
            text: qsTr("Begin %1").arg(root.model.year)
            Layout.fillWidth: true
            onClicked: root.model.beginSeason()
        },
        ActButton {
            objectName: "firstTrap"
            visible: root.model.isKnown && root.model.hasSeason && !root.model.hasTraps
            text: qsTr("Set up the first trap")
            Layout.fillWidth: true
            onClicked: root.opened("setup", "")
        }
    ]
}
