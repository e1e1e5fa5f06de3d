// SPDX-License-Identifier: MIT
// Set-up: the landowner's yes, and how to get in.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

SetupPage {
    id: root

    valid: agreed.valid
    spacing: Theme.gapWide

    FieldText {
        objectName: "landowner"
        label: qsTr("Who said yes")
        text: root.model.site.landowner
        error: root.model.site.landownerError
        Layout.fillWidth: true
        onEdited: text => root.model.site.landowner = text
    }

    PlainButton {
        objectName: "ownLand"
        visible: root.model.site.landowner.length === 0
        text: qsTr("It is my own land")
        Layout.fillWidth: true
        onClicked: root.model.site.ownLand()
    }

    FieldDay {
        id: agreed
        objectName: "agreedDay"
        label: qsTr("When")
        day: root.model.site.agreedDay
        today: root.model.site.today
        error: root.model.site.agreedError
        Layout.fillWidth: true
        onEdited: day => root.model.site.agreedDay = day
    }

    FieldRemark {
        objectName: "gate"
        label: qsTr("Gate, dog, way in")
        hint: qsTr("May stay empty.")
        text: root.model.site.gate
        error: root.model.site.gateError
        Layout.fillWidth: true
        onEdited: text => root.model.site.gate = text
    }

    NoticeBar {
        objectName: "withoutYes"
        visible: root.model.site.landowner.trim().length === 0
        text: qsTr("Without a yes the trap can be set up, but nobody can see later that the landowner agreed.")
        Layout.fillWidth: true
    }
}
