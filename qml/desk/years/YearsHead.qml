// SPDX-License-Identifier: MIT
// Above the rows: what is compared, which week, the bands of all years as a picture, and the table to copy.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Paint
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property YearsViewModel years

    spacing: Theme.gap

    NoticeBar {
        objectName: "trouble"
        visible: root.years.trouble.length > 0
        kind: "caution"
        text: root.years.trouble
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "views"
        label: qsTr("What is shown")
        labelShown: false
        keys: ["weeks", "years", "bands"]
        labels: [qsTr("Weeks"), qsTr("Years"), qsTr("Outbreaks")]
        chosen: root.years.view
        Layout.fillWidth: true
        onPicked: key => root.years.view = key
    }

    GridLayout {
        visible: root.years.view === "weeks"
        columns: root.width < 320 * Theme.textScale ? 1 : 2
        columnSpacing: Theme.gapSmall
        rowSpacing: Theme.gapSmall
        Layout.fillWidth: true

        PlainButton {
            objectName: "weekBefore"
            text: qsTr("Week before")
            enabled: root.years.canGoBack
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onClicked: root.years.goWeeks(-1)
        }

        PlainButton {
            objectName: "weekAfter"
            text: qsTr("Week after")
            enabled: root.years.canGoOn
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onClicked: root.years.goWeeks(1)
        }
    }

    ChoiceChips {
        objectName: "by"
        visible: root.years.view === "years"
        label: qsTr("By")
        keys: ["district", "keeper"]
        labels: [qsTr("district"), qsTr("cooperator")]
        chosen: root.years.by
        Layout.fillWidth: true
        onPicked: key => root.years.by = key
    }

    Words {
        objectName: "heading"
        text: root.years.heading
        kind: "strong"
        visible: text.length > 0
        Layout.fillWidth: true
    }

    Words {
        objectName: "doing"
        visible: text.length > 0
        text: root.years.doing
        kind: "soft"
        Layout.fillWidth: true
    }

    Card {
        id: history
        objectName: "history"
        visible: root.years.view === "bands" && bars.picture.description.length > 0
        Layout.fillWidth: true

        PictureItem {
            id: bars
            objectName: "bands"
            picture: root.years.bands(history.width - 2 * history.padding, Theme.textScale, root.years.revision)
            dark: Theme.dark
            fontFamily: Theme.family
            Layout.fillWidth: true
            Layout.preferredHeight: Math.max(1, root.years.bandsHeight(history.width - 2 * history.padding, Theme.textScale, root.years.revision))

            Accessible.role: Accessible.Graphic
            Accessible.name: bars.picture.description
        }
    }

    Words {
        objectName: "weeksBasis"
        visible: root.years.view === "weeks" && root.years.hasRows
        text: qsTr("Each count is shared out over its nights. A bulletin takes only full counts of seven nights, made round: its medians may differ.")
        kind: "small"
        Layout.fillWidth: true
    }

    Words {
        visible: root.years.view === "years"
        text: qsTr("Each year up to the same date. Fields rotate, so districts and cooperators are compared, not fields.")
        kind: "soft"
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "copy"
        visible: root.years.hasRows
        text: root.years.copied ? qsTr("Copied: paste it into a spreadsheet") : qsTr("Copy this as a table")
        Layout.fillWidth: true
        onClicked: root.years.copy()
    }
}
