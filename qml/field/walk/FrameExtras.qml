// SPDX-License-Identifier: MIT
// What else a frame may tell: sick larvae, pods, the same stop, a remark; and undo.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property FrameViewModel model
    property bool isOpen: root.model.sick > 0 || root.model.podsKnown || root.model.remark.length > 0

    spacing: Theme.gapSmall

    Flow {
        id: flow
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        PlainButton {
            objectName: "undo"
            width: Math.min(implicitWidth, flow.width)
            visible: root.model.canUndo
            text: qsTr("Undo")
            onClicked: root.model.undo()
        }

        PlainButton {
            objectName: "sick"
            width: Math.min(implicitWidth, flow.width)
            text: root.model.sick > 0 ? qsTr("Sick or parasitised: %1").arg(root.model.sick) : qsTr("One sick or parasitised")
            onClicked: root.model.addSick(1)
        }

        PlainButton {
            objectName: "more"
            width: Math.min(implicitWidth, flow.width)
            visible: !root.isOpen
            text: qsTr("Pods, remark")
            onClicked: root.isOpen = true
        }
    }

    ToggleRow {
        objectName: "sameStop"
        visible: root.model.canSameStop
        text: qsTr("Same stop as the last frame")
        detail: qsTr("Then the two count as one look at the field.")
        checked: root.model.sameStop
        Layout.fillWidth: true
        onToggled: root.model.sameStop = checked
    }

    Words {
        objectName: "placeLine"
        visible: text.length > 0 && !root.model.isTooNear
        text: root.model.placeLine
        kind: "soft"
        Layout.fillWidth: true
    }

    FieldNumber {
        objectName: "podsSeen"
        visible: root.isOpen
        label: qsTr("Pods looked at")
        hint: qsTr("Empty: none looked at")
        known: root.model.podsKnown
        value: root.model.podsSeen
        step: 10
        to: 9999
        Layout.fillWidth: true
        onEdited: value => root.model.setPods(value, root.model.podsDamaged)
        onCleared: root.model.clearPods()
    }

    FieldNumber {
        objectName: "podsDamaged"
        visible: root.isOpen && root.model.podsKnown
        label: qsTr("Of these, damaged")
        value: root.model.podsDamaged
        to: root.model.podsSeen
        emptyAllowed: false
        Layout.fillWidth: true
        onEdited: value => root.model.setPods(root.model.podsSeen, value)
    }

    FieldRemark {
        objectName: "remark"
        visible: root.isOpen
        label: qsTr("Remark")
        text: root.model.remark
        Layout.fillWidth: true
        onEdited: text => root.model.remark = text
    }
}
