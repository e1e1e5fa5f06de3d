// SPDX-License-Identifier: MIT
// Writes the rest of the season as a calendar file.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property CalendarViewModel model
    property string subject

    title: qsTr("Calendar file")
    subtitle: qsTr("Count days, lure and strip changes, scouting and taking down, for any calendar that reads such files.")

    Words {
        text: qsTr("It rings once a week at most: the evening of the count day. Written anew and read in again, it replaces what it said before.")
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "folder"
        label: qsTr("Folder")
        hint: qsTr("The file is called %1.").arg(root.model.fileName)
        text: root.model.folder
        maximumLength: 1000
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        Layout.fillWidth: true
        onEdited: text => root.model.folder = text
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "written"
        visible: root.model.written.length > 0
        kind: "kept"
        text: root.model.written
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "write"
            text: qsTr("Write the file")
            enabled: !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.write()
        }
    ]
}
