// SPDX-License-Identifier: MIT
// What was found of lure and strip, and what was changed, with the reminders that belong to each.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ColumnLayout {
    id: root

    required property VisitLureViewModel model

    spacing: 12

    Card {
        Layout.fillWidth: true

        ToggleRow {
            objectName: "lureThere"
            text: qsTr("The lure was there")
            checked: root.model.lureThere
            onToggled: root.model.lureThere = checked
            Layout.fillWidth: true
        }

        ToggleRow {
            objectName: "lureChanged"
            text: qsTr("I put in a new lure")
            checked: root.model.lureChanged
            onToggled: root.model.lureChanged = checked
            Layout.fillWidth: true
        }

        ColumnLayout {
            objectName: "handling"
            visible: root.model.handlingNeeded
            spacing: 12
            Layout.fillWidth: true

            HandlingPicture {
                noText: qsTr("Never with bare fingers")
                yesText: qsTr("Tip it from its packet, or use forceps")
                Layout.fillWidth: true
            }

            // qmllint disable unqualified
            Each {
                model: root.model.handling

                Words {
                    required property string modelData
                    text: modelData
                    kind: "small"
                    Layout.fillWidth: true
                }
            }
            // qmllint enable unqualified

            InkButton {
                objectName: "handlingRead"
                text: qsTr("I did not touch the lure")
                Layout.fillWidth: true
                onClicked: root.model.acknowledgeHandling()
            }
        }

        FieldText {
            objectName: "lureLot"
            visible: root.model.lureChanged && !root.model.handlingNeeded
            label: qsTr("Lot on its packet")
            text: root.model.lureLot
            onEdited: text => root.model.lureLot = text
            Layout.fillWidth: true
        }

        FieldDay {
            objectName: "lureExpiry"
            visible: root.model.lureChanged && !root.model.handlingNeeded
            label: qsTr("Use by")
            day: root.model.lureExpiry
            today: root.model.today
            onEdited: day => root.model.lureExpiry = day
            Layout.fillWidth: true
        }

        NoticeBar {
            objectName: "expired"
            visible: text.length > 0
            kind: "caution"
            text: root.model.expiredWords
            Layout.fillWidth: true
        }
    }

    Card {
        visible: root.model.hasStrip
        Layout.fillWidth: true

        ToggleRow {
            objectName: "stripThere"
            text: qsTr("The killing strip was there")
            checked: root.model.stripThere
            onToggled: root.model.stripThere = checked
            Layout.fillWidth: true
        }

        ToggleRow {
            objectName: "mothsAlive"
            text: qsTr("Moths were alive in the bucket")
            checked: root.model.mothsAlive
            onToggled: root.model.mothsAlive = checked
            Layout.fillWidth: true
        }

        NoticeBar {
            objectName: "changeStrip"
            visible: (root.model.mothsAlive || !root.model.stripThere) && !root.model.stripChanged
            kind: "caution"
            text: root.model.mothsAlive ? qsTr("Moths alive: the strip is spent. Change it.") : qsTr(
                                              "Without its strip the trap lets moths out. Put a new one in.")
            Layout.fillWidth: true
        }

        ToggleRow {
            objectName: "stripChanged"
            text: qsTr("I put in a new strip")
            checked: root.model.stripChanged
            onToggled: root.model.stripChanged = checked
            Layout.fillWidth: true
        }

        NoticeBar {
            objectName: "stripCautions"
            visible: root.model.stripChanged || root.model.mothsAlive || !root.model.stripThere
            kind: "caution"
            title: qsTr("Before you touch a strip")
            text: root.model.stripCautions.join("\n")
            Layout.fillWidth: true
        }
    }
}
