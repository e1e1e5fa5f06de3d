// SPDX-License-Identifier: MIT
// Fields and choices.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

GalleryPage {
    title: "Slough corner · bertha trap 1"
    subtitle: "Is the trap still above the canopy?"
    headExtra: StepTrail {
        labels: ["Count", "Trap", "Lure", "Done"]
        current: 1
        Layout.fillWidth: true
    }

    FieldText {
        label: "Name of the field"
        hint: "As you call it yourself"
        text: "Slough corner"
        Layout.fillWidth: true
    }
    FieldText {
        label: "Landowner"
        placeholder: "Who said yes"
        error: "A name is needed, so that you know whom to ring."
        Layout.fillWidth: true
    }
    FieldNumber {
        label: "Canopy"
        unit: "cm"
        step: 5
        value: 95
        to: 300
        Layout.fillWidth: true
        onEdited: v => value = v
    }
    FieldNumber {
        label: "Entrance"
        unit: "cm"
        step: 5
        known: false
        error: "It must lie between 0 and 300."
        Layout.fillWidth: true
    }
    FieldDay {
        label: "Day of the visit"
        day: "2026-07-07"
        today: "2026-07-07"
        Layout.fillWidth: true
    }
    ChoiceChips {
        label: "Crop stage"
        keys: ["a", "b", "c", "d"]
        labels: ["Leafy", "Bolting", "First flowers", "Flowering is over"]
        chosen: "c"
        Layout.fillWidth: true
    }
    ToggleRow {
        text: "The trap was emptied"
        detail: "The next count starts from now"
        checked: true
        Layout.fillWidth: true
    }
    ToggleRow {
        text: "Sprayed since the last visit"
        Layout.fillWidth: true
    }
    FieldRemark {
        label: "Remark"
        text: "Deer have been at the stake again."
        Layout.fillWidth: true
    }
    pinned: ActButton {
        text: "Next: lure and strip"
        Layout.fillWidth: true
    }
}
