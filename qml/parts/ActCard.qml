// SPDX-License-Identifier: MIT
// The one thing to do next, on the dark ground of the act: what, where, why, and the yellow key that begins it.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

Rectangle {
    id: root

    required property string title
    required property string actText
    property string text: ""
    property string also: "" // what else there is to do there
    property string alsoWhy: ""

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
            objectName: "actText"
            visible: text.length > 0
            text: root.text
            kind: "small"
            color: Theme.actInk
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

        PressButton {
            id: alsoButton
            property bool isOpen: false
            objectName: "also"
            visible: root.also.length > 0
            //: what else is due at a stop; a list follows
            text: qsTr("Also: %1").arg(root.also)
            fill: Theme.act
            fillPressed: Theme.actPressed
            words: Theme.actInk
            edgeWidth: 0
            horizontalPadding: 0
            font.pixelSize: Theme.typeSmall
            Layout.fillWidth: true
            Accessible.description: alsoButton.isOpen ? root.alsoWhy : qsTr("Touch to hear why.")
            onClicked: alsoButton.isOpen = !alsoButton.isOpen

            contentItem: Words {
                text: alsoButton.text
                Accessible.ignored: true
                kind: "small"
                color: Theme.actInk
                verticalAlignment: Text.AlignVCenter
                font.weight: Font.DemiBold
            }
        }

        Words {
            objectName: "alsoWhy"
            visible: alsoButton.visible && alsoButton.isOpen
            text: root.alsoWhy
            kind: "small"
            color: Theme.actInkSoft
            Layout.fillWidth: true
        }
    }
}
