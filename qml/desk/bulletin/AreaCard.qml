// SPDX-License-Identifier: MIT
// One area of a bulletin: its name, and what is said of it a line each.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

Card {
    id: root

    required property string title
    required property list<string> lines
    property string reason: "" // why nothing is said
    property bool isOwn: false

    Words {
        objectName: "title"
        text: root.title
        kind: root.isOwn ? "head" : "strong"
        Layout.fillWidth: true
    }

    Repeater {
        model: root.lines

        Words {
            required property string modelData
            objectName: "line"
            text: modelData
            kind: root.isOwn ? "body" : "small"
            Layout.fillWidth: true
        }
    }

    Words {
        objectName: "reason"
        visible: text.length > 0
        text: root.reason
        kind: "soft"
        Layout.fillWidth: true
    }
}
