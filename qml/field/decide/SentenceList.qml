// SPDX-License-Identifier: MIT
// Sentences under a heading, each a card of its own line; nothing where there are none.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

ColumnLayout {
    id: root

    required property string title
    required property list<string> sentences

    visible: root.sentences.length > 0

    SectionLabel {
        text: root.title
        Layout.fillWidth: true
    }

    Card {
        Layout.fillWidth: true

        // qmllint disable unqualified
        Each {
            model: root.sentences

            Words {
                required property string modelData
                required property int index
                objectName: "sentence" + index
                text: modelData
                Layout.fillWidth: true
            }
        }
        // qmllint enable unqualified
    }
}
