// SPDX-License-Identifier: MIT
// The stake at three stages of the crop, and too low.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

GalleryPage {
    title: "Slough corner · bertha trap 1"
    subtitle: "Is the trap still above the canopy?"

    StakePicture {
        description: "The entrance stands 23 cm above the canopy"
        entranceMm: 1180
        canopyMm: 950
        stage: "flowering"
        entranceText: "entrance 118 cm"
        canopyText: "canopy 95 cm"
        clearanceText: "23 cm clear"
        Layout.fillWidth: true
    }
    StakePicture {
        description: "The entrance stands 5 cm below the canopy"
        entranceMm: 1000
        canopyMm: 1050
        stage: "podding"
        entranceText: "entrance 100 cm"
        canopyText: "canopy 105 cm"
        clearanceText: "5 cm too low"
        Layout.fillWidth: true
    }
    StakePicture {
        description: "The entrance stands 70 cm above the canopy"
        entranceMm: 1000
        canopyMm: 300
        stage: "leafy"
        entranceText: "entrance 100 cm"
        canopyText: "canopy 30 cm"
        clearanceText: "70 cm clear"
        Layout.fillWidth: true
    }
    pinned: ActButton {
        text: "Next: lure and strip"
        Layout.fillWidth: true
    }
}
