// SPDX-License-Identifier: MIT
// Reminders, one below the other, each with its bullet.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property list<string> lines

    spacing: Theme.gapSmall

    // qmllint disable unqualified
    Each {
        model: root.lines

        RowLayout {
            id: line
            required property string modelData
            spacing: Theme.gapSmall
            Layout.fillWidth: true

            Rectangle {
                implicitWidth: Theme.gapSmall
                implicitHeight: Theme.gapSmall
                radius: width / 2
                color: Theme.next
                border.width: Theme.hairline
                border.color: Theme.edge
                Layout.alignment: Qt.AlignTop
                Layout.topMargin: Theme.typeBody * 0.45
            }

            Words {
                text: line.modelData
                Layout.fillWidth: true
            }
        }
    }
    // qmllint enable unqualified
}
