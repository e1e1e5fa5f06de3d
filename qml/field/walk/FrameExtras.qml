// SPDX-License-Identifier: MIT
// What else a frame may tell: sick larvae, pods, a remark; and undo.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property FrameViewModel model
    readonly property bool valid: seen.valid && damaged.valid // what is refused stands in the box, and is not kept
    property bool isOpen: root.model.sick > 0 || root.model.podsKnown || root.model.remark.length > 0

    spacing: Theme.gapSmall

    Flow {
        id: flow
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        PlainButton {
            objectName: "sick"
            width: Math.min(implicitWidth, flow.width)
            text: root.model.sick > 0 ? qsTr("Sick: %1").arg(root.model.sick) : qsTr("One sick")
            Accessible.name: qsTr("Sick or parasitised: %1. One more.").arg(root.model.sick)
            onClicked: root.model.addSick(1)
        }

        PlainButton {
            objectName: "more"
            width: Math.min(implicitWidth, flow.width)
            visible: !root.isOpen
            text: qsTr("Pods, remark")
            onClicked: root.isOpen = true
        }

        // Last, so that its coming and going moves nothing else under a finger.
        PlainButton {
            objectName: "undo"
            width: Math.min(implicitWidth, flow.width)
            visible: root.model.canUndo
            text: qsTr("Undo")
            onClicked: root.model.undo()
        }
    }

    FieldNumber {
        id: seen
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
        id: damaged
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
