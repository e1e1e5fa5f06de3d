// SPDX-License-Identifier: MIT
// One frame: larvae by size, what the walk comes to, and whether to go on.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property FrameViewModel model

    signal opened(string route, string subject)

    title: root.model.title
    subtitle: root.model.frameLine

    Connections {
        target: root.model
        function onFrameKept() {
            root.scrollToTop();
        }
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "place"
        visible: text.length > 0 && root.model.isTooNear
        kind: "question"
        text: root.model.placeLine
        action: root.model.canSameStop ? qsTr("It is the same stop") : ""
        Layout.fillWidth: true
        onActed: root.model.sameStop = true
    }

    GridLayout {
        objectName: "tiles"
        columns: Theme.textScale > 1.5 ? 1 : 3
        columnSpacing: Theme.gapSmall
        rowSpacing: Theme.gapSmall
        Layout.fillWidth: true

        Each {
            model: root.model.tiles

            SizeTile {
                required property int index
                required property real highMm
                objectName: "size" + index
                share: Math.min(1, highMm / 40)
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                onMore: root.model.add(index, 1)
                onLess: root.model.add(index, -1)
            }
        }
    }

    FrameExtras {
        id: extras
        model: root.model
        Layout.fillWidth: true
    }

    EstimatePanel {
        objectName: "estimate"
        mean: root.model.mean
        range: root.model.rangeLine
        call: root.model.callLine
        Layout.fillWidth: true
    }

    StopLines {
        visible: root.model.hasThreshold
        model: root.model
        Layout.fillWidth: true
    }

    LarvaRuler {
        edges: root.model.edges
        Layout.fillWidth: true
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

    PlainButton {
        objectName: "money"
        text: root.model.hasThreshold ? qsTr("Threshold and decision") : qsTr("Say what control costs")
        Layout.fillWidth: true
        onClicked: root.opened("decide", root.model.walk)
    }

    SectionLabel {
        visible: root.model.framesKept > 0
        text: qsTr("Frames so far")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.kept

        ListCard {
            required property int index
            required property string besides
            required property string detail
            required property string route
            required property string subject
            objectName: "kept" + index
            subtitle: detail
            rightText: besides
            Layout.fillWidth: true
            onClicked: root.opened(route, subject)
        }
    }

    PlainButton {
        objectName: "history"
        text: qsTr("Correct the walk, or see its history")
        Layout.fillWidth: true
        onClicked: root.opened("history", "walk/" + root.model.walk)
    }

    PlainButton {
        objectName: "stop"
        visible: root.model.framesKept > 0 && !root.model.isDecided
        text: qsTr("Stop here: to the decision")
        enabled: extras.valid && !root.model.busy
        Layout.fillWidth: true
        onClicked: root.model.finish()
    }

    Words {
        objectName: "caution"
        visible: text.length > 0
        text: root.model.caution
        kind: "soft"
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "finish"
            visible: root.model.isDecided
            text: qsTr("Enough: to the decision")
            enabled: extras.valid && !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.finish()
        },
        PlainButton {
            objectName: "keepOn"
            visible: root.model.isDecided
            text: root.model.keepText
            enabled: extras.valid && !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.keepFrame()
        },
        ActButton {
            objectName: "keep"
            visible: !root.model.isDecided
            text: root.model.keepText
            enabled: extras.valid && !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.keepFrame()
        }
    ]
}
