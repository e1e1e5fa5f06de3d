// SPDX-License-Identifier: MIT
// Larvae of one size: how long they are, how many were found, and keys for one less and one more.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

Rectangle {
    id: root

    required property string name
    required property string span
    required property int count
    property real share: 1 // of the longest larva, for the little outline

    signal less
    signal more

    implicitWidth: 100
    implicitHeight: column.implicitHeight + 2 * Theme.gap
    radius: Theme.radius
    color: Theme.card
    border.width: Theme.hairline
    border.color: Theme.line

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.gapSmall
        anchors.topMargin: Theme.gap
        spacing: Theme.gapTiny

        LarvaOutline {
            Layout.alignment: Qt.AlignHCenter
            Layout.preferredWidth: Math.max(16, (root.width - 3 * Theme.gap) * root.share)
            Layout.preferredHeight: 10
        }

        Words {
            objectName: "count"
            text: root.count.toLocaleString(Qt.locale(), "f", 0)
            kind: "number"
            horizontalAlignment: Text.AlignHCenter
            Layout.fillWidth: true
            Accessible.name: qsTr("%1, %2: %3").arg(root.name).arg(root.span).arg(root.count)
        }

        Words {
            text: root.span
            kind: "small"
            horizontalAlignment: Text.AlignHCenter
            Layout.fillWidth: true
            Accessible.ignored: true
        }

        GridLayout {
            columns: root.width < 2 * Theme.touchWide + 3 * Theme.gapSmall ? 1 : 2
            columnSpacing: Theme.gapTiny
            rowSpacing: Theme.gapTiny
            Layout.fillWidth: true

            PressButton {
                objectName: "plus"
                text: "+1"
                fill: Theme.act
                fillPressed: Theme.actPressed
                words: Theme.actInk
                edgeWidth: 0
                font.pixelSize: Theme.typeTitle
                horizontalPadding: 2
                Layout.fillWidth: true
                Layout.preferredHeight: Theme.touchWide
                Accessible.name: qsTr("%1: one more").arg(root.name)
                onClicked: root.more()
            }

            PressButton {
                objectName: "minus"
                text: "−1"
                enabled: root.count > 0
                font.pixelSize: Theme.typeTitle
                horizontalPadding: 2
                Layout.fillWidth: true
                Layout.preferredHeight: Theme.touch
                Accessible.name: qsTr("%1: one less").arg(root.name)
                onClicked: root.less()
            }
        }
    }
}
