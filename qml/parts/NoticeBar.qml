// SPDX-License-Identifier: MIT
// Something to know. kind: "note", "caution", "question" or "kept"; drawn sign and words say which.
import QtQuick
import Duskrow.Theme

Rectangle {
    id: root

    required property string text
    property string kind: "note"
    property string title: ""
    property string action: ""

    signal acted

    function kindName(kind: string): string {
        switch (kind) {
        case "caution":
            return qsTr("Caution");
        case "question":
            return qsTr("Question");
        case "kept":
            return qsTr("Kept");
        default:
            return qsTr("Note");
        }
    }

    implicitWidth: 280
    implicitHeight: column.y + Math.max(column.implicitHeight, sign.height) + Theme.gap
    radius: Theme.radius
    color: root.kind === "caution" || root.kind === "question" ? Theme.groundCaution : Theme.groundNote

    Accessible.role: root.kind === "note" ? Accessible.StaticText : Accessible.AlertMessage
    Accessible.name: root.kindName(root.kind) + ": " + (root.title ? root.title + ". " : "") + root.text

    SignMark {
        id: sign
        x: Theme.padding
        y: Theme.gap
        kind: root.kind
    }

    Column {
        id: column
        x: sign.x + sign.width + Theme.gap
        y: Theme.gap + Math.max(0, (sign.height - Theme.typeSmall * 1.4) / 2)
        width: root.width - x - Theme.padding
        spacing: Theme.gapTiny

        Words {
            width: column.width
            visible: text.length > 0
            text: root.title
            kind: "strong"
            Accessible.ignored: true
        }

        Words {
            width: column.width
            text: root.text
            kind: "small"
            Accessible.ignored: true
        }

        Item {
            width: 1
            height: Theme.gapTiny
            visible: actionButton.visible
        }

        PlainButton {
            id: actionButton
            objectName: "noticeAction"
            width: Math.min(implicitWidth, column.width)
            height: Math.max(Theme.touch, implicitContentHeight + topPadding + bottomPadding)
            visible: text.length > 0
            text: root.action
            onClicked: root.acted()
        }
    }
}
