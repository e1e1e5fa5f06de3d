// SPDX-License-Identifier: MIT
// The trap cut open, step by step, and how the lure is handled.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

GalleryPage {
    title: "Lure first, then the strip"
    subtitle: "Poplar bend"

    HandlingPicture {
        noText: "Never with bare fingers"
        yesText: "With forceps, or tipped from its packet"
        Layout.fillWidth: true
    }
    TrapPicture {
        description: "The trap cut open"
        highlight: "lure"
        label: "The lure, in its basket under the lid"
        Layout.fillWidth: true
    }
    TrapPicture {
        description: "The trap cut open"
        highlight: "strip"
        label: "The killing strip, on the floor of the bucket"
        Layout.fillWidth: true
    }
    TrapPicture {
        description: "The trap cut open"
        highlight: "entrance"
        label: "The entrance, above the canopy"
        Layout.fillWidth: true
    }
    TrapPicture {
        description: "The trap cut open"
        Layout.fillWidth: true
    }
    pinned: ActButton {
        text: "The lure is in"
        Layout.fillWidth: true
    }
}
