// SPDX-License-Identifier: MIT
// Set-up: how a lure is handled, before it is opened. Read once a day.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

SetupPage {
    id: root

    HandlingPicture {
        objectName: "handlingPicture"
        noText: qsTr("Never with bare fingers")
        yesText: qsTr("With forceps, or tipped from its packet")
        Layout.fillWidth: true
    }

    LineList {
        objectName: "handlingLines"
        lines: root.model.trap.handling
        Layout.fillWidth: true
    }
}
