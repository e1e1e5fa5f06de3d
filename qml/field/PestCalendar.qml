// SPDX-License-Identifier: MIT
// The calendar of moth and crop at one trap's field: the strip, the same as sentences, and the flight.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Paint
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property string subject
    required property PestCalendarViewModel model
    property string view: "calendar"

    title: root.model.title
    subtitle: root.model.subtitle
    maximumWidth: root.width >= 900 ? Math.round(1.5 * Theme.contentWidth) : Theme.contentWidth

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    Words {
        objectName: "reading"
        visible: !root.model.isRead && root.model.trouble.length === 0
        text: qsTr("Reading …")
        kind: "soft"
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "view"
        visible: root.model.hasFlight
        label: qsTr("Show")
        labelShown: false
        keys: ["calendar", "flight"]
        labels: [qsTr("Calendar"), qsTr("Flight")]
        chosen: root.view
        Layout.fillWidth: true
        onPicked: key => root.view = key
    }

    PictureItem {
        id: strip
        objectName: "strip"
        visible: root.view === "calendar" && root.model.entries.count > 0
        picture: root.model.strip(width, Theme.textScale, root.model.revision)
        dark: Theme.dark
        fontFamily: Theme.family
        Layout.fillWidth: true
        Layout.preferredHeight: Math.ceil(width * picture.ratio)

        Accessible.role: Accessible.Graphic
        Accessible.name: picture.description
    }

    FlightPart {
        visible: root.view === "flight"
        model: root.model
        Layout.fillWidth: true
    }

    SectionLabel {
        visible: caution.visible
        text: qsTr("Before you decide")
        Layout.fillWidth: true
    }

    NoticeBar {
        id: caution
        objectName: "caution"
        visible: root.model.cautions.length > 0
        kind: "caution"
        text: root.model.cautions.join("\n")
        Layout.fillWidth: true
    }

    SectionLabel {
        visible: entries.visible
        text: qsTr("When and why")
        Layout.fillWidth: true
    }

    CalendarEntries {
        id: entries
        objectName: "entries"
        visible: root.view === "calendar" && root.model.entries.count > 0
        entries: root.model.entries
        Layout.fillWidth: true
    }

    SentenceList {
        objectName: "warmth"
        title: qsTr("Warmth")
        sentences: root.model.warmth
        Layout.fillWidth: true
    }

    SentenceList {
        objectName: "gaps"
        title: qsTr("What cannot be said")
        sentences: root.model.gaps
        Layout.fillWidth: true
    }
}
