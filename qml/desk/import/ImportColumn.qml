// SPDX-License-Identifier: MIT
// One column: its name, what it holds and why, the first cells; touched, the things that it may hold.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property ImportViewModel importing
    required property int index
    required property string key
    required property string title
    required property string besides
    required property string detail
    required property string subject
    required property list<string> flags
    property bool isOpen: false

    objectName: "column" + root.key
    spacing: Theme.gapSmall

    ListCard {
        objectName: "card"
        title: root.title
        subtitle: [root.besides + ", " + root.detail].concat(root.flags.length > 0 ? [root.flags.join(" · ")] : []).join("\n")
        Layout.fillWidth: true
        onClicked: root.isOpen = !root.isOpen
    }

    Loader {
        active: root.isOpen
        visible: root.isOpen
        Layout.fillWidth: true

        // qmllint disable unqualified
        sourceComponent: ChoiceChips {
            objectName: "is"
            label: qsTr("What %1 holds").arg(root.title)
            labelShown: false
            keys: root.importing.columnCodes
            labels: root.importing.columnNames
            chosen: root.subject
            onPicked: code => root.importing.chooseColumn(root.key, code)
        }
        // qmllint enable unqualified
    }
}
