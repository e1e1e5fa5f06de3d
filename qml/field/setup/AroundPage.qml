// SPDX-License-Identifier: MIT
// Set-up: distances that the protocol asks for; all of them may stay open.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

SetupPage {
    id: root

    readonly property SetupAround around: root.model.around

    valid: edge.valid && farmyard.valid && light.valid
    spacing: Theme.gapWide

    FieldNumber {
        id: edge
        objectName: "edge"
        visible: hint.length > 0
        label: qsTr("In from the field edge, by paces")
        hint: root.around.edgeAdvice
        unit: qsTr("m")
        to: 5000
        known: root.around.edge >= 0
        value: root.around.edge
        Layout.fillWidth: true
        onEdited: value => root.around.edge = value
        onCleared: root.around.edge = -1
    }

    FieldNumber {
        id: farmyard
        objectName: "farmyard"
        visible: hint.length > 0
        label: qsTr("To the nearest farmyard")
        hint: root.around.farmyardAdvice
        unit: qsTr("m")
        step: 50
        to: 50000
        known: root.around.farmyard >= 0
        value: root.around.farmyard
        Layout.fillWidth: true
        onEdited: value => root.around.farmyard = value
        onCleared: root.around.farmyard = -1
    }

    FieldNumber {
        id: light
        objectName: "light"
        visible: hint.length > 0
        label: qsTr("To the nearest strong light")
        hint: root.around.lightAdvice
        unit: qsTr("m")
        step: 50
        to: 50000
        known: root.around.light >= 0
        value: root.around.light
        Layout.fillWidth: true
        onEdited: value => root.around.light = value
        onCleared: root.around.light = -1
    }

    Card {
        objectName: "neighbours"
        visible: root.around.trapLabels.length > 0
        Layout.fillWidth: true

        Words {
            text: qsTr("Nearest trap of this season")
            kind: "soft"
            Layout.fillWidth: true
        }

        // qmllint disable unqualified
        Each {
            model: root.around.trapLabels

            FactRow {
                required property string modelData
                required property int index

                objectName: "neighbour_" + index
                label: modelData
                value: root.around.trapDistances[index] ?? ""
                Layout.fillWidth: true
            }
        }
        // qmllint enable unqualified
    }

    NoticeBar {
        objectName: "concern"
        visible: root.around.concern.length > 0
        title: qsTr("Not quite as the protocol asks")
        text: root.around.concern + "\n" + qsTr("You can set the trap up here all the same.")
        Layout.fillWidth: true
    }

    Words {
        objectName: "unmeasured"
        visible: text.length > 0
        text: root.around.unmeasured
        kind: "soft"
        Layout.fillWidth: true
    }
}
