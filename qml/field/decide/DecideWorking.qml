// SPDX-License-Identifier: MIT
// The arithmetic line by line, how often the stop rule errs, and where the numbers come from.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ColumnLayout {
    id: root

    required property DecisionViewModel model

    SectionLabel {
        visible: root.model.working.count > 0
        text: qsTr("The threshold, step by step")
        Layout.fillWidth: true
    }

    Card {
        objectName: "working"
        visible: root.model.working.count > 0
        Layout.fillWidth: true

        Each {
            model: root.model.working

            ColumnLayout {
                id: step
                required property int index
                required property string title
                required property string detail
                spacing: 0
                Layout.fillWidth: true

                Words {
                    text: step.title
                    kind: "soft"
                    Layout.fillWidth: true
                }

                Words {
                    objectName: "step" + step.index
                    text: step.detail
                    Layout.fillWidth: true
                }
            }
        }
    }

    SentenceList {
        objectName: "errorRates"
        title: qsTr("How often the stop rule errs")
        sentences: root.model.errorRates
        Layout.fillWidth: true
    }

    SentenceList {
        objectName: "planning"
        title: qsTr("How many frames, and the textbook")
        sentences: root.model.planning
        Layout.fillWidth: true
    }

    SentenceList {
        objectName: "evidence"
        title: qsTr("Where the loss per larva comes from")
        sentences: root.model.evidence
        Layout.fillWidth: true
    }

    SentenceList {
        objectName: "sources"
        title: qsTr("Sources")
        sentences: root.model.sources
        Layout.fillWidth: true
    }
}
