// SPDX-License-Identifier: MIT
// Something the person should know. kind: "note", "caution", "question" or "kept"; drawn sign and words say which.
import QtQuick
import QtQuick.Layouts
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

    implicitWidth: row.implicitWidth + 2 * Theme.padding
    implicitHeight: row.implicitHeight + 2 * Theme.gap
    radius: Theme.radius
    color: root.kind === "caution" || root.kind === "question" ? Theme.groundCaution : Theme.groundNote

    Accessible.role: root.kind === "note" ? Accessible.StaticText : Accessible.AlertMessage
    Accessible.name: root.kindName(root.kind) + ": " + (root.title ? root.title + ". " : "") + root.text

    RowLayout {
        id: row
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.leftMargin: Theme.padding
        anchors.rightMargin: Theme.padding
        anchors.topMargin: Theme.gap
        spacing: Theme.gap

        SignMark {
            kind: root.kind
            Layout.alignment: Qt.AlignTop
        }

        ColumnLayout {
            spacing: Theme.gapTiny
            Layout.fillWidth: true

            Words {
                visible: text.length > 0
                text: root.title
                kind: "strong"
                Layout.fillWidth: true
                Accessible.ignored: true
            }

            Words {
                text: root.text
                kind: "small"
                Layout.fillWidth: true
                Accessible.ignored: true
            }

            PlainButton {
                objectName: "noticeAction"
                visible: text.length > 0
                text: root.action
                implicitHeight: Math.max(Theme.touch, implicitContentHeight + topPadding + bottomPadding)
                Layout.topMargin: Theme.gapTiny
                Layout.maximumWidth: parent.width
                onClicked: root.acted()
            }
        }
    }
}
