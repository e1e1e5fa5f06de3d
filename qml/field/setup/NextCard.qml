// SPDX-License-Identifier: MIT
// Set-up: what comes after it, day by day.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

Card {
    id: root

    required property SetupViewModel model

    spacing: Theme.gap

    // qmllint disable unqualified
    Each {
        model: root.model.nextLabels

        FactRow {
            required property string modelData
            required property int index

            objectName: "next_" + index
            label: modelData
            value: root.model.nextValues[index] ?? ""
            Layout.fillWidth: true
        }
    }
    // qmllint enable unqualified

    Words {
        text: qsTr("Bring a white tray, clean gloves, a pencil, and small bags for those you are not sure of.")
        kind: "small"
        Layout.fillWidth: true
    }
}
