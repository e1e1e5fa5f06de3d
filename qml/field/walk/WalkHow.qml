// SPDX-License-Identifier: MIT
// Where and when to look, and what to do at a frame: one page, once a season.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property FrameViewModel model

    title: qsTr("How to look")
    subtitle: root.model.frameLine

    Words {
        objectName: "now"
        text: root.model.now
        kind: "strong"
        Layout.fillWidth: true
    }

    // qmllint disable unqualified
    Repeater {
        model: root.model.how

        NoticeBar {
            required property string modelData
            required property int index
            objectName: "how" + index
            text: modelData
            Layout.fillWidth: true
        }
    }
    // qmllint enable unqualified

    Words {
        text: qsTr("Count what lives and feeds by its size; the sick, apart. Take the next frame wherever the steps end, not where it looks bad.")
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "read"
            text: qsTr("To the first frame")
            Layout.fillWidth: true
            onClicked: root.model.readHow()
        }
    ]
}
