// SPDX-License-Identifier: MIT
// The one thing to do next, on the dark ground of the act: what, where, why, and the yellow key that begins it.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

Rectangle {
    id: root

    required property string title
    required property string actText
    property string where: ""
    property string text: ""
    property string why: ""

    signal acted

    implicitWidth: 280
    implicitHeight: column.implicitHeight + 2 * Theme.gapWide
    radius: Theme.radius
    color: Theme.act

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.gapWide
        spacing: Theme.gapSmall

        Words {
            objectName: "actTitle"
            text: root.title
            kind: "head"
            color: Theme.actInk
            Layout.fillWidth: true
            Accessible.role: Accessible.Heading
            Accessible.name: root.title
        }

        Words {
            objectName: "actWhere"
            visible: text.length > 0
            text: root.where
            kind: "small"
            color: Theme.actInk
            Layout.fillWidth: true
        }

        Words {
            objectName: "actLine"
            visible: text.length > 0
            text: root.text
            kind: "small"
            color: Theme.actInk
            font.weight: Font.DemiBold
            Layout.fillWidth: true
        }

        Words {
            objectName: "actWhy"
            visible: text.length > 0
            text: root.why
            kind: "soft"
            color: Theme.actInkSoft
            Layout.fillWidth: true
        }

        ActButton {
            objectName: "act"
            text: root.actText
            horizontalPadding: 2 * Theme.padding
            Layout.topMargin: Theme.gapTiny
            Layout.maximumWidth: column.width
            onClicked: root.acted()
        }
    }
}
