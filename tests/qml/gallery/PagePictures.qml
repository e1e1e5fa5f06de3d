// SPDX-License-Identifier: MIT
// The moths and what to look for.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

GalleryPage {
    title: "Is it a bertha moth?"
    subtitle: "Look at the forewing"

    MothPicture {
        kind: "bertha-armyworm"
        description: "Bertha armyworm moth, wings spread"
        labels: ["White kidney spot on a grey forewing", "Wavy white and olive line near the tip", "Silvery fringe"]
        Layout.fillWidth: true
    }
    MothPicture {
        kind: "clover-cutworm"
        description: "Clover cutworm moth, wings spread"
        labels: ["Even ash-grey to pale brown, mottled", "Faint line like a W"]
        Layout.fillWidth: true
    }
    MothPicture {
        kind: "true-armyworm"
        description: "True armyworm moth, wings spread"
        labels: ["One white pinhead spot on a tan forewing"]
        Layout.fillWidth: true
    }
    MothPicture {
        kind: "unknown"
        description: "A worn moth"
        labels: []
        Layout.fillWidth: true
    }
    pinned: ActButton {
        text: "It is bertha"
        Layout.fillWidth: true
    }
}
