// SPDX-License-Identifier: MIT
// A photograph of the visit, from a file.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property VisitDoneViewModel model

    spacing: Theme.gapSmall

    Image {
        objectName: "picture"
        visible: root.model.hasPhoto
        source: root.model.photo
        asynchronous: true
        fillMode: Image.PreserveAspectFit
        sourceSize.width: 1024
        Layout.fillWidth: true
        Layout.preferredHeight: 180
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The photograph of this visit")
    }

    PlainButton {
        objectName: "addPhoto"
        text: root.model.hasPhoto ? qsTr("Choose another photograph") : qsTr("Add a photograph")
        Layout.fillWidth: true
        onClicked: chooser.open()
    }

    PlainButton {
        objectName: "removePhoto"
        visible: root.model.hasPhoto
        text: qsTr("Leave the photograph out")
        Layout.fillWidth: true
        onClicked: root.model.removePhoto()
    }

    FileDialog {
        id: chooser
        title: qsTr("A photograph of this visit")
        nameFilters: [qsTr("Pictures (*.jpg *.jpeg *.png *.webp)"), qsTr("All files (*)")]
        onAccepted: root.model.addPhoto(chooser.selectedFile)
    }
}
