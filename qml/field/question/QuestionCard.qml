// SPDX-License-Identifier: MIT
// What a coordinator asks, and the three ways to answer: it is right, the count is set right, words.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property QuestionsViewModel questions

    signal opened(string route, string subject)

    function send(): void {
        if (words.text.trim().length === 0) {
            words.takeFocus();
            return;
        }
        root.questions.answer(words.text);
    }

    visible: root.questions.count > 0 || kept.text.length > 0
    spacing: Theme.gap

    Card {
        objectName: "questionCard"
        readonly property QuestionsViewModel questions: root.questions
        visible: root.questions.count > 0
        Layout.fillWidth: true

        Words {
            objectName: "asker"
            text: root.questions.asker
            kind: "soft"
            Layout.fillWidth: true
        }

        Words {
            objectName: "question"
            text: root.questions.words
            kind: "strong"
            Layout.fillWidth: true
        }

        Words {
            objectName: "about"
            text: root.questions.about
            kind: "small"
            Layout.fillWidth: true
        }

        GridLayout {
            columns: root.width < 320 * Theme.textScale ? 1 : 2
            columnSpacing: Theme.gapSmall
            rowSpacing: Theme.gapSmall
            Layout.fillWidth: true

            PlainButton {
                objectName: "itIsRight"
                text: qsTr("It is right")
                enabled: !root.questions.busy
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                onClicked: root.questions.itIsRight()
            }

            PlainButton {
                objectName: "setRight"
                text: qsTr("Correct it")
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                onClicked: root.opened("correct", root.questions.subject)
            }
        }

        FieldText {
            id: words
            property string asked: root.questions.question
            objectName: "answerWords"
            label: qsTr("Or in your words")
            maximumLength: 500
            Layout.fillWidth: true
            onAskedChanged: words.text = "" // what was typed was for another question
            onAccepted: root.send()
        }

        PlainButton {
            objectName: "answer"
            text: qsTr("Answer")
            enabled: !root.questions.busy && words.text.trim().length > 0
            Layout.fillWidth: true
            onClicked: root.send()
        }

        Words {
            objectName: "more"
            visible: root.questions.count > 1
            text: root.questions.count === 2 ? qsTr("One more question comes after this one.") : qsTr("%1 more questions come after this one.").arg(root.questions.count - 1)
            kind: "soft"
            Layout.fillWidth: true
        }
    }

    NoticeBar {
        id: kept
        objectName: "answerKept"
        visible: text.length > 0
        text: root.questions.trouble || root.questions.saidLine
        kind: root.questions.trouble.length > 0 ? "caution" : "kept"
        Layout.fillWidth: true
    }
}
