// SPDX-License-Identifier: MIT
// The trap comes down: the last count first, then each closing step said as done. What is left stays on the list.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

LifeAct {
    id: root

    readonly property bool lost: root.form.reason === "lost"

    signal opened(string route, string subject)

    title: qsTr("End of the trap")
    dayLabel: root.lost ? qsTr("Found gone on") : qsTr("Taken down on")
    keepText: qsTr("The trap has ended: keep it")

    NoticeBar {
        objectName: "lastCount"
        visible: root.model.needsLastCount && !root.lost
        kind: "question"
        text: qsTr("No count today. Empty it and count a last time first?")
        action: qsTr("Count now")
        Layout.fillWidth: true
        onActed: root.opened("visit", root.model.trap)
    }

    ChoiceChips {
        objectName: "reason"
        label: qsTr("Why does it end?")
        keys: ["season_over", "lost"]
        labels: [qsTr("Season over"), qsTr("Lost")]
        chosen: root.form.reason
        Layout.fillWidth: true
        onPicked: key => root.form.reason = key
    }

    Words {
        visible: root.lost
        text: qsTr("What it caught since the last count is gone with it: its total becomes “at least”.")
        Layout.fillWidth: true
    }

    SectionLabel {
        text: qsTr("Done so far")
        Layout.fillWidth: true
    }

    ToggleRow {
        objectName: "lureOut"
        visible: !root.lost
        text: qsTr("Lure out")
        detail: qsTr("Sealed and taken away from the field, as its label says")
        checked: root.form.lureOut
        Layout.fillWidth: true
        onToggled: root.form.lureOut = checked
    }

    ToggleRow {
        objectName: "stripOut"
        visible: !root.lost && root.model.hasStrip
        text: qsTr("Killing strip out")
        detail: qsTr("With nitrile gloves, disposed of as its label says")
        checked: root.form.stripOut
        Layout.fillWidth: true
        onToggled: root.form.stripOut = checked
    }

    ToggleRow {
        objectName: "washed"
        visible: !root.lost
        text: qsTr("Trap washed and stored")
        detail: qsTr("Apart by species: a trap keeps the scent of its lure")
        checked: root.form.washed
        Layout.fillWidth: true
        onToggled: root.form.washed = checked
    }

    ToggleRow {
        objectName: "sparesFrozen"
        text: qsTr("Spare lures frozen")
        detail: qsTr("Sealed; leave it off when there are none")
        checked: root.form.sparesFrozen
        Layout.fillWidth: true
        onToggled: root.form.sparesFrozen = checked
    }
}
