// SPDX-License-Identifier: MIT
// Nothing here yet: what that means and what to do about it. A picture can stand above the words.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property string title
    property string text: ""
    property string action: ""
    default property alias picture: pictureColumn.data

    signal acted

    spacing: Theme.gap

    ColumnLayout {
        id: pictureColumn
        visible: children.length > 0
        Layout.fillWidth: true
    }

    Words {
        text: root.title
        kind: "title"
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }

    Words {
        visible: text.length > 0
        text: root.text
        kind: "soft"
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "emptyAction"
        visible: text.length > 0
        text: root.action
        Layout.alignment: Qt.AlignHCenter
        Layout.maximumWidth: root.width
        onClicked: root.acted()
    }
}
