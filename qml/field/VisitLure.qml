// SPDX-License-Identifier: MIT
// Lure and killing strip: one tap when both are there; otherwise what was found and done.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

VisitFrame {
    id: root

    readonly property VisitLureViewModel model: root.visit.lure

    Words {
        objectName: "question"
        text: root.model.hasStrip ? qsTr("Are lure and strip there, and no moth alive?") : qsTr("Is the lure there?")
        kind: "heading"
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "details"
        visible: !root.model.detailed
        text: qsTr("No, or I changed something")
        Layout.fillWidth: true
        onClicked: root.model.detailed = true
    }

    LureDetails {
        objectName: "lureDetails"
        visible: root.model.detailed
        model: root.model
        Layout.fillWidth: true
    }

    ToggleRow {
        objectName: "emptied"
        text: qsTr("I emptied the trap")
        detail: root.model.emptiedWords
        checked: root.model.emptied
        onToggled: root.model.emptied = checked
        Layout.fillWidth: true
    }

    ListCard {
        objectName: "sprayed"
        title: qsTr("Sprayed since the last visit?")
        subtitle: root.model.sprayedWords
        onClicked: sprayedSheet.open()
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "reentry"
        visible: text.length > 0
        kind: "caution"
        text: root.model.reentry
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "undo"
        visible: root.model.canUndo
        text: qsTr("Undo")
        onClicked: root.model.undo()
    }

    TrapPicture {
        visible: !root.model.detailed
        kind: root.model.trapShape
        description: bucket ? qsTr("The trap opened: the lure in its basket under the lid, the killing strip on the floor of the bucket") : qsTr("The trap; its lure hangs inside")
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "next"
            text: root.model.detailed || root.model.answeredYes ? qsTr("Next: look it over") : root.model.hasStrip ? qsTr(
                                                                                                                         "Yes: lure and strip there") :
                                                                                                                     qsTr("Yes: the lure is there")
            Layout.fillWidth: true
            onClicked: {
                if (!root.model.detailed)
                    root.model.allThere();
                root.visit.next();
            }
        }
    ]

    SprayedSheet {
        id: sprayedSheet
        objectName: "sprayedSheet"
        model: root.model
    }
}
