// SPDX-License-Identifier: MIT
// One counted part of a heavy catch.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

Card {
    id: root

    required property int number
    required property string unit
    required property string many
    required property bool mothsKnown
    required property real moths
    required property bool sizeKnown
    required property real size
    property bool canRemove: false

    signal mothsEdited(real moths)
    signal mothsCleared
    signal sizeEdited(real size)
    signal sizeCleared
    signal removed

    Words {
        text: qsTr("Part %1").arg(root.number)
        kind: "strong"
        Layout.fillWidth: true
    }

    FieldNumber {
        objectName: "partAmount"
        label: qsTr("Amount of this part")
        known: root.sizeKnown
        value: root.size
        unit: root.unit
        to: 100000
        step: 5
        decimals: 1
        onEdited: size => root.sizeEdited(size)
        onCleared: root.sizeCleared()
        Layout.fillWidth: true
    }

    FieldNumber {
        objectName: "partMoths"
        label: qsTr("The pest’s %1 in it").arg(root.many)
        known: root.mothsKnown
        value: root.moths
        to: 999999
        step: 10
        onEdited: moths => root.mothsEdited(moths)
        onCleared: root.mothsCleared()
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "removePart"
        visible: root.canRemove
        text: qsTr("Leave this part out")
        Layout.fillWidth: true
        onClicked: root.removed()
    }
}
