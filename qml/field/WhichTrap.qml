// SPDX-License-Identifier: MIT
// Which trap is it? Asked where two stand within the error of the position, or where none was chosen.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property VisitViewModel visit
    readonly property WhichTrapViewModel traps: root.visit.which

    signal picked(string trap)

    title: root.traps.isAmbiguous ? qsTr("Which trap is it?") : qsTr("Count a trap")
    subtitle: root.traps.hasPosition ? qsTr("Your position is known %1. Nearest first.").arg(root.traps.accuracy) : qsTr(
                                           "There is no position yet: choose by name.")

    NoticeBar {
        objectName: "ambiguous"
        visible: root.traps.isAmbiguous
        kind: "question"
        text: qsTr("These traps stand too close together for the position to tell them apart. Look at the tag on the trap.")
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.visit.trouble.length > 0
        kind: "caution"
        text: root.visit.trouble
        Layout.fillWidth: true
    }

    EmptyState {
        visible: root.traps.isKnown && list.count === 0
        title: qsTr("No trap is out")
        text: qsTr("Set up a trap first; then it can be counted here.")
        Layout.fillWidth: true
    }

    ListView {
        id: list
        objectName: "nearTraps"
        model: root.traps
        spacing: 8
        interactive: false
        Layout.fillWidth: true
        Layout.preferredHeight: contentHeight

        // qmllint disable unqualified
        delegate: ListCard {
            required property string trapId
            required property string where
            required property string pest
            required property bool isClose
            required property int index
            required title
            objectName: "near_" + index
            width: ListView.view.width
            subtitle: pest
            rightText: where
            due: isClose
            dueWord: qsTr("here")
            onClicked: root.picked(trapId)
        }
        // qmllint enable unqualified
    }
}
