// SPDX-License-Identifier: MIT
// The count of a visit.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

GalleryPage {
    title: "Slough corner · bertha trap 1"
    subtitle: "8 m away · last emptied 7 nights ago"
    fillsPage: true
    headExtra: StepTrail {
        labels: ["Count", "Trap", "Lure", "Done"]
        Layout.fillWidth: true
    }

    BigNumber {
        value: "47"
        caption: "bertha moths in the bucket"
        lines: ["6.7 a night", "so far 212 → 259", "flight not over yet"]
        Layout.fillWidth: true
    }
    TallyPad {
        label: "One more bertha moth"
        hint: "tap anywhere here, or a key"
        focus: true
        Layout.fillWidth: true
        Layout.fillHeight: true
    }
    TallyKeys {
        label: "Bertha moths"
        Layout.fillWidth: true
    }
    Flow {
        spacing: 8
        Layout.fillWidth: true
        PlainButton {
            text: "None caught"
        }
        InkButton {
            text: "Bees 2"
        }
    }
    pinned: ActButton {
        text: "Next: look at the trap"
        Layout.fillWidth: true
    }
}
