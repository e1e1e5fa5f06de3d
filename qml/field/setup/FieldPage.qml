// SPDX-License-Identifier: MIT
// Set-up: the field, a new one or one of this season.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

SetupPage {
    id: root

    valid: seeded.valid || root.model.site.known

    NoticeBar {
        objectName: "resumed"
        visible: root.model.resumed
        text: qsTr("Going on where this set-up stopped.")
        action: qsTr("Start over")
        Layout.fillWidth: true
        onActed: root.model.startOver()
    }

    ChoiceChips {
        objectName: "newOrKnown"
        visible: root.model.site.hasSites
        label: qsTr("The trap stands in")
        keys: ["new", "known"]
        labels: [qsTr("a new field"), qsTr("a field of this season")]
        chosen: root.model.site.known ? "known" : "new"
        Layout.fillWidth: true
        onPicked: key => root.model.site.known = key === "known"
    }

    ColumnLayout {
        visible: root.model.site.known
        spacing: Theme.gap
        Layout.fillWidth: true

        FieldText {
            objectName: "siteSearch"
            visible: root.model.site.moreSites.length > 0 || root.model.site.search.length > 0
            label: qsTr("Find a field")
            text: root.model.site.search
            Layout.fillWidth: true
            onEdited: text => root.model.site.search = text
        }

        // qmllint disable unqualified
        Each {
            model: root.model.site.siteKeys

            ListCard {
                required property string modelData
                required property int index

                objectName: "site_" + index
                title: root.model.site.siteNames[index] ?? ""
                subtitle: root.model.site.siteDetails[index] ?? ""
                due: modelData === root.model.site.site
                dueWord: qsTr("chosen")
                chevron: false
                Layout.fillWidth: true
                onClicked: root.model.site.site = modelData
            }
        }
        // qmllint enable unqualified

        Words {
            visible: text.length > 0
            text: root.model.site.moreSites
            kind: "soft"
            Layout.fillWidth: true
        }

        FieldError {
            text: root.model.site.siteError
            Layout.fillWidth: true
        }
    }

    ColumnLayout {
        visible: !root.model.site.known
        spacing: Theme.gapWide
        Layout.fillWidth: true

        FieldText {
            objectName: "siteName"
            label: qsTr("Name of the field")
            hint: qsTr("As it shall stand on every list.")
            text: root.model.site.name
            error: root.model.site.nameError
            Layout.fillWidth: true
            onEdited: text => root.model.site.name = text
        }

        FieldText {
            objectName: "fieldName"
            label: qsTr("What people here call it, or its land description")
            hint: qsTr("May stay empty.")
            text: root.model.site.field
            error: root.model.site.fieldError
            Layout.fillWidth: true
            onEdited: text => root.model.site.field = text
        }

        ChoiceChips {
            objectName: "crop"
            visible: keys.length > 0
            label: qsTr("Crop")
            keys: root.model.site.cropKeys
            labels: root.model.site.cropLabels
            chosen: root.model.site.crop
            Layout.fillWidth: true
            onPicked: key => root.model.site.crop = key
        }

        ChoiceChips {
            objectName: "district"
            visible: keys.length > 0
            label: qsTr("District")
            keys: root.model.site.districtKeys
            labels: root.model.site.districtLabels
            chosen: root.model.site.district
            Layout.fillWidth: true
            onPicked: key => root.model.site.district = root.model.site.district === key ? "" : key
        }

        FieldDay {
            id: seeded
            objectName: "seededDay"
            label: qsTr("Seeded on")
            hint: qsTr("Not needed; it helps to foresee the crop stage.")
            emptyAllowed: true
            day: root.model.site.seededDay
            today: root.model.site.today
            Layout.fillWidth: true
            onEdited: day => root.model.site.seededDay = day
            onCleared: root.model.site.seededDay = ""
        }
    }

    NoticeBar {
        objectName: "lateness"
        visible: root.model.lateness.length > 0
        text: root.model.lateness
        Layout.fillWidth: true
    }
}
