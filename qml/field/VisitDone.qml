// SPDX-License-Identifier: MIT
// The last look: what the visit says, what is asked about it, its day, remark and photograph; then keep it.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

VisitFrame {
    id: root

    readonly property VisitDoneViewModel model: root.visit.done

    function keep(): void {
        if (root.model.questions.length > 0)
            askSheet.open();
        else
            root.visit.keep();
    }

    Words {
        objectName: "headline"
        text: root.model.headline
        kind: "heading"
        Layout.fillWidth: true
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }

    Words {
        objectName: "meaning"
        visible: text.length > 0
        text: root.model.meaning
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "trouble"
        visible: text.length > 0
        kind: "caution"
        text: root.visit.trouble || root.model.trouble
        Layout.fillWidth: true
    }

    // qmllint disable unqualified
    Each {
        model: root.model.questions

        NoticeBar {
            required property string modelData
            required property int index
            objectName: "question_" + index
            kind: "question"
            text: modelData
            action: qsTr("It is right")
            onActed: root.model.answer(index)
            Layout.fillWidth: true
        }
    }
    // qmllint enable unqualified

    Card {
        visible: root.model.labels.length > 0
        Layout.fillWidth: true

        // qmllint disable unqualified
        Each {
            model: root.model.labels

            FactRow {
                required property string modelData
                required property int index
                label: modelData
                value: root.model.values[index] ?? ""
                Layout.fillWidth: true
            }
        }
        // qmllint enable unqualified
    }

    FieldText {
        objectName: "sampleNumber"
        visible: root.model.hasSample
        label: qsTr("Number on the bag")
        hint: qsTr("Bag those nobody is sure of, write this number on the bag in pencil, and freeze it.")
        text: root.model.sampleNumber
        error: root.model.sampleError
        onEdited: text => root.model.sampleNumber = text
        Layout.fillWidth: true
    }

    FieldDay {
        objectName: "day"
        label: qsTr("Day of the visit")
        day: root.model.day
        today: root.model.today
        onEdited: day => root.model.day = day
        Layout.fillWidth: true
    }

    FieldRemark {
        objectName: "remark"
        label: qsTr("Remark")
        text: root.model.remark
        onEdited: text => root.model.remark = text
        Layout.fillWidth: true
    }

    VisitPhoto {
        objectName: "photo"
        model: root.model
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "undo"
        visible: root.model.canUndo
        text: qsTr("Undo")
        onClicked: root.model.undo()
    }

    pinned: [
        ActButton {
            objectName: "keep"
            text: root.visit.isCorrection ? qsTr("Keep the correction") : qsTr("Keep this visit")
            enabled: !root.visit.busy
            Layout.fillWidth: true
            onClicked: root.keep()
        }
    ]

    AskSheet {
        id: askSheet
        objectName: "askSheet"
        title: qsTr("Is it right?")
        text: root.model.questions.join("\n\n")
        yesText: qsTr("It is right: keep it")
        safeText: qsTr("Look again")
        onYes: root.visit.keep()
    }
}
