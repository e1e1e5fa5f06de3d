// SPDX-License-Identifier: MIT
// Crop stages to choose from, each with its picture, its code and its words. Touching the chosen one again leaves it open.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property string label
    required property list<string> keys // the codes
    required property list<string> labels
    property string chosen: ""

    signal picked(string key)

    spacing: Theme.gapTiny

    Accessible.role: Accessible.Grouping
    Accessible.name: root.label

    Words {
        text: root.label
        kind: "soft"
        Layout.fillWidth: true
        Accessible.ignored: true
    }

    // qmllint disable unqualified
    Each {
        model: root.labels

        PressButton {
            id: row

            required property string modelData
            required property int index
            readonly property string key: root.keys[row.index] ?? ""
            readonly property bool isChosen: row.key.length > 0 && row.key === root.chosen

            objectName: "stage_" + row.key
            text: row.modelData
            readonly property int pictureHeight: 52
            leastHeight: row.pictureHeight + Theme.gap
            fill: row.isChosen ? Theme.act : Theme.card
            fillPressed: row.isChosen ? Theme.actPressed : Theme.cardPressed
            words: row.isChosen ? Theme.actInk : Theme.ink
            font.pixelSize: Theme.typeBody
            horizontalPadding: Theme.gap
            verticalPadding: Theme.gapTiny
            Layout.fillWidth: true
            onClicked: root.picked(row.key)

            Accessible.name: row.text
            Accessible.role: Accessible.RadioButton
            Accessible.checkable: true
            Accessible.checked: row.isChosen

            contentItem: RowLayout {
                spacing: Theme.gap

                Rectangle {
                    radius: Theme.radiusSmall
                    color: Theme.paper
                    Layout.preferredWidth: 44 + Theme.gapSmall
                    Layout.preferredHeight: row.pictureHeight + Theme.gapTiny
                    Layout.alignment: Qt.AlignVCenter

                    StagePicture {
                        anchors.centerIn: parent
                        width: 44
                        height: row.pictureHeight
                        stage: Number(row.key)
                    }
                }

                Words {
                    text: row.text
                    color: row.words
                    font.weight: row.isChosen ? Font.Bold : Font.Medium
                    Layout.fillWidth: true
                    Layout.alignment: Qt.AlignVCenter
                    Accessible.ignored: true
                }
            }
        }
    }
    // qmllint enable unqualified
}
