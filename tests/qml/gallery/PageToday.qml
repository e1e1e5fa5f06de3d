// SPDX-License-Identifier: MIT
// A list of what is due, and what else a page can say.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

GalleryPage {
    title: "Two stops today"
    subtitle: "Tuesday 7 July"
    canGoBack: false

    ListCard {
        title: "Slough corner · bertha trap 1"
        subtitle: "7 nights since it was emptied"
        rightText: "8 m"
        due: true
        Layout.fillWidth: true
    }
    ListCard {
        title: "Poplar bend · bertha trap 1"
        subtitle: "count due, 8 nights; raise the stake"
        rightText: "3.4 km"
        due: true
        dueWord: ""
        Layout.fillWidth: true
    }
    SectionLabel {
        text: "Later this week"
        Layout.fillWidth: true
    }
    ListCard {
        title: "Report by Tuesday noon"
        subtitle: "one count still to come"
        rightText: "Tue"
        Layout.fillWidth: true
    }
    NoticeBar {
        kind: "kept"
        text: "2 counts wait for a signal; safe on this phone."
        Layout.fillWidth: true
    }
    NoticeBar {
        kind: "caution"
        title: "Read the label of the strip"
        text: "Nitrile gloves; open it outdoors, upwind; never in a cab, house or food fridge."
        Layout.fillWidth: true
    }
    NoticeBar {
        kind: "question"
        text: "418 is many times any other count of this trap. Is it right?"
        action: "Look at it again"
        Layout.fillWidth: true
    }
    NoticeBar {
        text: "Bands are for whole seasons."
        Layout.fillWidth: true
    }
    Card {
        Layout.fillWidth: true
        FactRow {
            label: "Lure in since"
            value: "12 June, 25 days"
            Layout.fillWidth: true
        }
        FactRow {
            label: "Reported by"
            value: "the landowner, by telephone, on Sunday evening"
            Layout.fillWidth: true
        }
        Repeater {
            model: ["not known yet", "low", "uncertain", "moderate", "high"]
            BandDots {
                required property int index
                required property string modelData
                band: index
                name: modelData
                Layout.fillWidth: true
            }
        }
    }
    EmptyState {
        title: "No trap yet"
        text: "Set one up in the first week of June, before the first moths fly."
        action: "Set up a trap"
        Layout.fillWidth: true
    }
    pinned: TabRow {
        keys: ["today", "traps", "larvae", "year"]
        labels: ["Today", "Traps", "Larvae", "Year"]
        current: "today"
        Layout.fillWidth: true
    }
}
