// SPDX-License-Identifier: MIT
// Set-up: a last look: photograph, remark, the day, and what comes next.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

SetupPage {
    id: root

    valid: setDay.valid
    spacing: Theme.gapWide

    NextCard {
        objectName: "whatNext"
        model: root.model
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "stillOpen"
        visible: root.model.stillOpen.length > 0
        kind: "caution"
        text: root.model.stillOpen + " " + qsTr("You can keep the trap and do it later.")
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "lateness"
        visible: root.model.lateness.length > 0
        text: root.model.lateness
        Layout.fillWidth: true
    }

    FieldDay {
        id: setDay
        objectName: "setDay"
        label: qsTr("Day of set-up")
        day: root.model.setDay
        today: root.model.site.today
        Layout.fillWidth: true
        onEdited: day => root.model.setDay = day
    }

    Image {
        objectName: "photo"
        visible: root.model.photo.length > 0
        source: root.model.photoSource
        asynchronous: true
        fillMode: Image.PreserveAspectFit
        sourceSize.width: Theme.contentWidth
        Layout.fillWidth: true
        Layout.maximumHeight: 240

        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Photograph of the trap")
    }

    PlainButton {
        objectName: "choosePhoto"
        text: root.model.photo ? qsTr("Another photograph") : qsTr("Add a photograph")
        Layout.fillWidth: true
        onClicked: {
            picker.active = true;
            picker.item.open();
        }
    }

    PlainButton {
        objectName: "dropPhoto"
        visible: root.model.photo.length > 0
        text: qsTr("Leave the photograph out")
        Layout.fillWidth: true
        onClicked: root.model.dropPhoto()
    }

    FieldRemark {
        objectName: "remark"
        label: qsTr("Remark")
        text: root.model.remark
        error: root.model.remarkError
        Layout.fillWidth: true
        onEdited: text => root.model.remark = text
    }

    Loader {
        id: picker
        objectName: "picker"
        active: false

        sourceComponent: FileDialog {
            title: qsTr("A photograph of the trap")
            nameFilters: [qsTr("Pictures (*.jpg *.jpeg *.png *.webp *.heic)")]
            onAccepted: root.model.choosePhoto(selectedFile)
        }
    }
}
