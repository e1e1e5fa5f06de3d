// SPDX-License-Identifier: MIT
// What is being counted just now, with the count of each: the pest, not it, not sure, bees.
import QtQuick
import QtQuick.Templates as T
import Duskrow.Parts
import Duskrow.Theme

Item {
    id: root

    required property string chosen
    required property list<string> counts
    readonly property list<string> keys: ["pest", "not_it", "unsure", "bees"]
    readonly property list<string> labels: [qsTr("Pest"), qsTr("Not it"), qsTr("Not sure"), qsTr("Bees")]
    readonly property real binWidth: (root.width - (grid.columns - 1) * grid.spacing) / grid.columns

    signal picked(string key)

    implicitWidth: 280
    implicitHeight: grid.implicitHeight

    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("What is being counted")

    Measure {
        id: measure
    }

    Grid {
        id: grid
        width: root.width
        columns: measure.widest(root.labels, Theme.typeSmall) + 2 * Theme.gapTiny > (root.width - 3 * grid.spacing) / 4 ? 2 : 4
        spacing: Theme.gapTiny

        // qmllint disable unqualified
        Each {
            id: bins
            model: root.labels

            T.Button {
                id: bin

                required property string modelData
                required property int index
                readonly property string key: root.keys[bin.index]
                readonly property bool isChosen: root.chosen === bin.key
                readonly property string amount: root.counts[bin.index] ?? "0"

                function step(by: int): void {
                    const other = bins.itemAt(bin.index + by);
                    if (other)
                        other.forceActiveFocus(Qt.TabFocusReason);
                }

                objectName: "bin_" + bin.key
                width: root.binWidth
                height: Math.max(Theme.touchWide, words.implicitHeight + 2 * Theme.gapSmall)
                focusPolicy: Qt.StrongFocus
                onClicked: root.picked(bin.key)

                Accessible.role: Accessible.RadioButton
                Accessible.name: bin.modelData + ": " + bin.amount
                Accessible.checkable: true
                Accessible.checked: bin.isChosen
                Accessible.onPressAction: bin.clicked()

                Keys.onReturnPressed: bin.clicked()
                Keys.onEnterPressed: bin.clicked()
                Keys.onRightPressed: bin.step(1)
                Keys.onLeftPressed: bin.step(-1)

                background: Rectangle {
                    radius: Theme.radius
                    color: bin.isChosen ? Theme.act : bin.down ? Theme.cardPressed : Theme.card
                    border.width: bin.isChosen ? 0 : Theme.hairline
                    border.color: Theme.edge

                    FocusRing {
                        shown: bin.visualFocus
                    }
                }

                contentItem: Item {
                    Column {
                        id: words
                        anchors.centerIn: parent
                        width: parent.width

                        Words {
                            width: words.width
                            text: bin.amount
                            kind: "strong"
                            color: bin.isChosen ? Theme.actInk : Theme.ink
                            font.weight: Font.Bold
                            horizontalAlignment: Text.AlignHCenter
                            Accessible.ignored: true
                        }

                        Words {
                            width: words.width
                            text: bin.modelData
                            kind: "small"
                            color: bin.isChosen ? Theme.actInk : Theme.ink
                            horizontalAlignment: Text.AlignHCenter
                            wrapMode: Text.NoWrap
                            Accessible.ignored: true
                        }
                    }
                }
            }
        }
        // qmllint enable unqualified
    }
}
