// SPDX-License-Identifier: MIT
// Asks why a record is withdrawn, and says what that does.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

Sheet {
    id: root

    required property HistoryViewModel model

    function withdraw(): void {
        root.model.withdraw();
        if (root.model.trouble.length > 0)
            why.takeFocus();
    }

    name: qsTr("Withdraw it?")
    onOpened: why.takeFocus()

    Connections {
        target: root.model
        function onRefreshed() {
            if (root.model.withdrawn.length > 0)
                root.settle();
        }
    }

    Words {
        text: root.name
        kind: "title"
        Layout.fillWidth: true
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }

    Words {
        text: root.model.warning
        Layout.fillWidth: true
    }

    FieldText {
        id: why
        objectName: "reason"
        label: qsTr("Why?")
        hint: qsTr("For example: typed at the wrong trap.")
        text: root.model.reason
        error: root.model.trouble
        maximumLength: 200
        Layout.fillWidth: true
        onEdited: text => root.model.reason = text
        onAccepted: root.withdraw()
    }

    InkButton {
        objectName: "withdrawYes"
        text: qsTr("Withdraw it")
        enabled: !root.model.busy
        Layout.fillWidth: true
        onClicked: root.withdraw()
    }

    PlainButton {
        objectName: "withdrawNo"
        text: qsTr("Leave it as it is")
        Layout.fillWidth: true
        onClicked: root.close()
    }
}
