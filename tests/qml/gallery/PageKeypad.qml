// SPDX-License-Identifier: MIT
// The number sheet over a page.
import QtQuick
import Duskrow.Parts

GalleryPage {
    title: "Slough corner · bertha trap 1"
    subtitle: "8 m away"

    KeypadSheet {
        visible: true
        label: "Bertha moths in the bucket"
    }
}
