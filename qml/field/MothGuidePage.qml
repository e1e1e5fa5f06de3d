// SPDX-License-Identifier: MIT
// The moth and its look-alikes, drawn, with the marks to look for.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property MothGuide guide

    title: qsTr("Which %1 is it?").arg(root.guide.one)
    subtitle: qsTr("Look at the freshest ones. Not sure? Count it as not sure and keep it.")

    // qmllint disable unqualified
    Each {
        model: root.guide

        Card {
            id: moth

            required property int index
            required property string kind
            required property string name
            required property string latin
            required property bool isPest
            required property bool hasPicture
            required property list<string> marks
            required property string remark
            objectName: "moth_" + moth.index
            Layout.fillWidth: true

            Words {
                text: moth.isPest ? qsTr("%1: the pest").arg(moth.name) : qsTr("%1: not it").arg(moth.name)
                kind: "title"
                Layout.fillWidth: true
                Accessible.role: Accessible.Heading
                Accessible.name: text
            }

            Words {
                text: moth.latin
                kind: "soft"
                font.italic: true
                Layout.fillWidth: true
            }

            MothPicture {
                kind: moth.hasPicture ? moth.kind : "unknown"
                visible: moth.hasPicture
                description: qsTr("Drawing of a %1 moth with open wings").arg(moth.name)
                labels: moth.hasPicture ? moth.marks : []
                Layout.fillWidth: true
            }

            Words {
                visible: !moth.hasPicture
                text: moth.marks.join("\n")
                kind: "small"
                Layout.fillWidth: true
            }

            Words {
                visible: text.length > 0
                text: moth.remark
                kind: "soft"
                Layout.fillWidth: true
            }
        }
    }
    // qmllint enable unqualified

    pinned: [
        ActButton {
            objectName: "backToCount"
            text: qsTr("Back to the count")
            Layout.fillWidth: true
            onClicked: root.back()
        }
    ]
}
