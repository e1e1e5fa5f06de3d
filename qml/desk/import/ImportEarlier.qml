// SPDX-License-Identifier: MIT
// Tables that came in by this device, and the way to take each back in one go.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property ImportViewModel model

    spacing: Theme.gapSmall

    SectionLabel {
        text: qsTr("Brought in on this device")
        Layout.fillWidth: true
    }

    Repeater {
        model: root.model.earlier

        ListCard {
            required property int index
            required property string key
            objectName: "earlier" + index
            subtitle: qsTr("Take it back")
            enabled: !root.model.isRunning
            Layout.fillWidth: true
            onClicked: {
                root.model.askBack(key);
                sheet.title = qsTr("Take %1 back?").arg(title);
                sheet.open();
            }
        }
    }

    AskSheet {
        id: sheet
        objectName: "takeBack"
        title: ""
        text: root.model.undoLine
        yesText: qsTr("Take it back")
        safeText: qsTr("Leave it")
        onYes: root.model.takeBack()
    }
}
