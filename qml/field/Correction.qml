// SPDX-License-Identifier: MIT
// Sets the fields of one record right, whatever its kind. The history keeps what was there before.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property string subject
    required property CorrectionViewModel model

    function allValid(): bool {
        for (let i = 0; i < entries.count; ++i) {
            if (!(entries.itemAt(i) as CorrectionEntry)?.valid)
                return false;
        }
        return true;
    }

    title: root.model.title
    onBack: root.model.forget()
    subtitle: qsTr("What stood here before stays in the history.")

    Connections {
        target: root.model
        function onKept() {
            root.back();
        }
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    Each {
        id: entries
        model: root.model.entries

        CorrectionEntry {
            entries: root.model.entries
            today: root.model.today
            Layout.fillWidth: true
        }
    }

    pinned: [
        ActButton {
            objectName: "keep"
            visible: root.model.isFound
            text: root.model.changes > 0 ? qsTr("Keep the correction") : qsTr("Nothing changed yet")
            enabled: !root.model.busy && root.model.changes > 0
            Layout.fillWidth: true
            onClicked: {
                if (root.allValid())
                    root.model.keep();
            }
        }
    ]
}
