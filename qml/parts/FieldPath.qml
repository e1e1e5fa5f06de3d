// SPDX-License-Identifier: MIT
// A folder or a file: typed, or chosen in the device's own dialog.
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property string label
    property string path: ""
    property string hint: ""
    property string error: ""
    property bool isFolder: true
    property list<string> filters: []

    signal edited(string path)
    signal accepted

    function pick(): void {
        chooser.active = true;
        if (root.isFolder)
            (chooser.item as FolderDialog)?.open();
        else
            (chooser.item as FileDialog)?.open();
    }

    spacing: Theme.gapSmall

    FieldText {
        objectName: "pathText"
        label: root.label
        hint: root.hint
        error: root.error
        text: root.path
        maximumLength: 1000
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        Layout.fillWidth: true
        onEdited: text => root.edited(text)
        onAccepted: root.accepted()
    }

    PlainButton {
        objectName: "choosePath"
        text: root.isFolder ? qsTr("Choose a folder") : qsTr("Choose a file")
        Layout.fillWidth: true
        onClicked: root.pick()
    }

    // The dialogs are heavy; most people type a path once, or never.
    Loader {
        id: chooser
        active: false
        sourceComponent: root.isFolder ? folderDialog : fileDialog
    }

    // qmllint disable unqualified
    Component {
        id: folderDialog
        FolderDialog {
            id: folders
            title: root.label
            onAccepted: root.edited(String(folders.selectedFolder))
        }
    }

    Component {
        id: fileDialog
        FileDialog {
            id: files
            title: root.label
            nameFilters: root.filters
            onAccepted: root.edited(String(files.selectedFile))
        }
    }
    // qmllint enable unqualified
}
