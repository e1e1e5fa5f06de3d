// SPDX-License-Identifier: MIT
// The visit is on disk: that it is, what to do with the bag, and what comes next.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property VisitViewModel visit

    signal replaced(string route, string subject)

    title: root.visit.title

    NoticeBar {
        objectName: "kept"
        kind: "kept"
        text: root.visit.keptWords
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "bag"
        visible: text.length > 0
        text: root.visit.bagWords
        Layout.fillWidth: true
    }

    Words {
        objectName: "nextCount"
        visible: text.length > 0
        text: root.visit.nextWords
        kind: "title"
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "season"
        text: qsTr("See the season of this trap")
        Layout.fillWidth: true
        onClicked: root.replaced("season", root.visit.trapId)
    }

    PlainButton {
        objectName: "samples"
        visible: root.visit.bagWords.length > 0
        text: qsTr("See its samples")
        Layout.fillWidth: true
        onClicked: root.replaced("samples", root.visit.trapId)
    }

    PlainButton {
        objectName: "correct"
        text: qsTr("Something is wrong: correct it")
        Layout.fillWidth: true
        onClicked: root.replaced("visit", "edit:" + root.visit.visitId)
    }

    pinned: [
        ActButton {
            objectName: "finish"
            text: qsTr("Done")
            focus: true
            Layout.fillWidth: true
            onClicked: root.back()
        }
    ]
}
