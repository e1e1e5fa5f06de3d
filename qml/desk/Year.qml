// SPDX-License-Identifier: MIT
// The season as a whole: programme, week, protocols, people; its calendar, and the year after.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property YearViewModel model
    property int questions: 0 // that wait for this coordinator
    property bool isJoined: false
    property bool isCoordinator: false

    signal opened(string route, string subject)

    title: qsTr("Season %1").arg(root.model.year)
    above: root.model.programme
    canGoBack: false

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "notBegun"
        visible: !root.model.hasSeason
        text: qsTr("This season is not begun yet. People, week and protocols come along; fields are new.")
        Layout.fillWidth: true
    }

    Card {
        visible: root.model.facts.count > 0
        Layout.fillWidth: true

        Each {
            model: root.model.facts

            FactRow {
                required property string title
                required property string besides
                label: title
                value: besides
                Layout.fillWidth: true
            }
        }
    }

    ListCard {
        objectName: "programme"
        title: qsTr("Change programme, week or name")
        Layout.fillWidth: true
        onClicked: root.opened("programme", "")
    }

    DeskWays {
        visible: root.isCoordinator
        hasSeason: root.model.hasSeason
        Layout.fillWidth: true
        onOpened: (route, subject) => root.opened(route, subject)
    }

    YearExchange {
        questions: root.questions
        isJoined: root.isJoined
        Layout.fillWidth: true
        onOpened: (route, subject) => root.opened(route, subject)
    }

    SectionLabel {
        visible: root.model.protocols.count > 0
        text: qsTr("Protocols in use")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.protocols

        ListCard {
            required property string detail
            required property string route
            required property string subject
            objectName: "protocol"
            subtitle: detail
            Layout.fillWidth: true
            onClicked: root.opened(route, subject)
        }
    }

    SectionLabel {
        text: qsTr("People")
        Layout.fillWidth: true
    }

    Card {
        Layout.fillWidth: true

        Each {
            model: root.model.people

            FactRow {
                required property string title
                required property string besides
                objectName: "person"
                label: title
                value: besides
                Layout.fillWidth: true
            }
        }
    }

    SectionLabel {
        text: qsTr("More")
        Layout.fillWidth: true
    }

    ListCard {
        objectName: "calendar"
        visible: root.model.hasSeason
        title: qsTr("Calendar file")
        subtitle: qsTr("Count days and what else is to come")
        Layout.fillWidth: true
        onClicked: root.opened("calendar", "")
    }

    ListCard {
        objectName: "samples"
        title: qsTr("Samples")
        subtitle: qsTr("Samples that are to be named")
        Layout.fillWidth: true
        onClicked: root.opened("samples", "")
    }

    ListCard {
        objectName: "settings"
        title: qsTr("Settings of this device")
        subtitle: qsTr("Light, size of type, position")
        Layout.fillWidth: true
        onClicked: root.opened("settings", "")
    }

    Words {
        objectName: "begunLine"
        visible: text.length > 0
        text: root.model.begunLine
        kind: "soft"
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "rollOver"
        visible: root.model.yearToBegin > 0
        text: qsTr("Begin %1 with the same people").arg(root.model.yearToBegin)
        Layout.fillWidth: true
        onClicked: ask.open()
    }

    AskSheet {
        id: ask
        objectName: "askRollOver"
        title: qsTr("Begin %1?").arg(root.model.yearToBegin)
        text: qsTr("Week, districts, protocols and people stay as they are. Traps do not come along: next year's fields are others.")
        yesText: qsTr("Begin %1").arg(root.model.yearToBegin)
        safeText: qsTr("Not yet")
        onYes: root.model.rollOver()
    }
}
