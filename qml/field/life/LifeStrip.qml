// SPDX-License-Identifier: MIT
// The killing strip is changed, under its cautions.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

LifeAct {
    id: root

    title: qsTr("New killing strip")
    keepText: qsTr("The new strip is in: keep it")

    TrapPicture {
        description: qsTr("The trap cut open; the killing strip lies on the floor of the bucket")
        highlight: "strip"
        label: qsTr("The new strip, on the floor of the bucket")
        Layout.fillWidth: true
    }

    LifeLines {
        objectName: "cautions"
        lines: root.model.stripCautions
        Layout.fillWidth: true
    }
}
