// SPDX-License-Identifier: MIT
// By what the stops are ordered, and the file of them in that order.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property RoundViewModel model

    spacing: Theme.gap

    ChoiceChips {
        objectName: "metric"
        label: qsTr("Distances")
        keys: ["straight", "grid"]
        //: how distances are reckoned: as the crow flies, or north-south and east-west
        labels: [qsTr("Straight lines"), qsTr("Survey grid")]
        chosen: root.model.metric
        Layout.fillWidth: true
        onPicked: key => root.model.metric = key
    }

    Words {
        text: qsTr("On the grid one goes north-south and east-west, as roads run where land was surveyed in squares. Either way it is a suggestion: no road, gate or slough is known here.")
        kind: "soft"
        Layout.fillWidth: true
    }

    ToggleRow {
        objectName: "infestedLast"
        text: qsTr("Infested fields last")
        detail: root.model.infestedLine
        checked: root.model.infestedLast
        Layout.fillWidth: true
        onToggled: root.model.infestedLast = checked
    }

    Words {
        text: qsTr("A field is infested when its latest walk was above the threshold, or when you mark it under “Change”.")
        kind: "soft"
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "suggestHere"
        visible: root.model.isHandOrder
        text: qsTr("Suggest an order again")
        Layout.fillWidth: true
        onClicked: root.model.suggestAgain()
    }

    SectionLabel {
        text: qsTr("File of the stops")
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "folder"
        label: qsTr("Folder")
        hint: qsTr("The file is called %1. Receivers and maps read it.").arg(root.model.file.fileName)
        text: root.model.file.folder
        maximumLength: 1000
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        Layout.fillWidth: true
        onEdited: text => root.model.file.folder = text
    }

    NoticeBar {
        objectName: "fileTrouble"
        visible: root.model.file.trouble.length > 0
        kind: "caution"
        text: root.model.file.trouble
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "written"
        visible: root.model.file.written.length > 0
        kind: "kept"
        text: root.model.file.written
        Layout.fillWidth: true
    }

    InkButton {
        objectName: "write"
        text: qsTr("Write the file")
        enabled: root.model.file.canWrite && !root.model.file.busy
        Layout.fillWidth: true
        onClicked: root.model.file.write()
    }
}
