// SPDX-License-Identifier: MIT
// Something that takes its time: what it is, how far it got, and the way to stop it.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

Card {
    id: root

    required property string text
    property double part: -1 // 0 to 1; negative where nobody knows

    signal stopped

    Words {
        text: root.part >= 0 ? qsTr("%1: %2 %").arg(root.text).arg(Math.round(root.part * 100)) : root.text
        kind: "strong"
        Layout.fillWidth: true
    }

    Rectangle {
        Layout.fillWidth: true
        implicitHeight: Theme.gapSmall
        radius: height / 2
        color: Theme.line
        Accessible.role: Accessible.ProgressBar
        Accessible.name: root.text

        Rectangle {
            width: parent.width * Math.max(0.05, Math.min(1, root.part))
            height: parent.height
            radius: height / 2
            color: Theme.ink
        }
    }

    PlainButton {
        objectName: "stop"
        text: qsTr("Stop")
        Layout.fillWidth: true
        onClicked: root.stopped()
    }
}
