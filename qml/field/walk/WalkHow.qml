// SPDX-License-Identifier: MIT
// Where and when to look, and what to do at a frame: one page, once a season.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Field
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

    SentenceList {
        objectName: "how"
        title: qsTr("Where, when and how")
        sentences: root.model.how
        Layout.fillWidth: true
    }

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
