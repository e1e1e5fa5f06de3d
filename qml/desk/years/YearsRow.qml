// SPDX-License-Identifier: MIT
// One district or cooperator: a figure a line, and the way to its highest trap.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

Item {
    id: root

    required property int index
    required property string title
    required property list<string> flags // label, tab, value
    required property string detail
    required property string route
    required property string subject

    signal opened(string route, string subject)

    objectName: "row" + root.index
    implicitHeight: card.implicitHeight

    Card {
        id: card
        width: root.width
        height: implicitHeight

        Words {
            objectName: "title"
            text: root.title
            kind: "strong"
            Layout.fillWidth: true
        }

        Repeater {
            model: root.flags

            FactRow {
                required property string modelData
                label: modelData.split("\t")[0]
                value: modelData.split("\t")[1] ?? ""
                Layout.fillWidth: true
            }
        }

        PlainButton {
            objectName: "highest"
            visible: root.route.length > 0
            text: root.detail
            Layout.fillWidth: true
            onClicked: root.opened(root.route, root.subject)
        }
    }
}
