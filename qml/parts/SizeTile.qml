// SPDX-License-Identifier: MIT
// Larvae of one size: a touch anywhere on the tile is one more, the key below it one less.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property string name
    required property string span
    required property int count
    property real share: 1 // of the longest larva, for the little outline

    signal less
    signal more

    spacing: Theme.gapTiny

    PressButton {
        id: tile
        objectName: "plus"
        text: root.count.toLocaleString(Qt.locale(), "f", 0)
        leastHeight: 2 * Theme.touch
        horizontalPadding: Theme.gapTiny
        verticalPadding: Theme.gap
        Layout.fillWidth: true
        Layout.fillHeight: true
        Accessible.name: qsTr("%1, %2: %3. One more.").arg(root.name).arg(root.span).arg(root.count)
        onClicked: root.more()

        contentItem: Column {
            spacing: Theme.gapTiny

            LarvaOutline {
                anchors.horizontalCenter: parent.horizontalCenter
                width: Math.max(18, (tile.availableWidth - Theme.gap) * root.share)
                height: 10
            }

            Words {
                objectName: "count"
                width: parent.width
                text: tile.text
                kind: "number"
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }

            Words {
                width: parent.width
                text: root.span
                kind: "small"
                horizontalAlignment: Text.AlignHCenter
                Accessible.ignored: true
            }
        }
    }

    PressButton {
        objectName: "minus"
        text: "−1"
        leastHeight: Theme.touch
        enabled: root.count > 0
        horizontalPadding: Theme.gapTiny
        Layout.fillWidth: true
        Accessible.name: qsTr("%1: one less").arg(root.name)
        onClicked: root.less()
    }
}
