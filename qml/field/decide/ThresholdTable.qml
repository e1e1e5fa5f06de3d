// SPDX-License-Identifier: MIT
// The thresholds around the user's own cost and price, and what the walk says of each: a touch takes the cell.
// Below, above and too close are told by a sign in each cell, not by its colour alone.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property ThresholdGrid grid
    readonly property int columns: Math.max(1, root.grid.columns)
    readonly property real headWidth: measure.widest(root.grid.costs, Theme.typeSmall) + Theme.gapSmall
    readonly property real cellWidth: Math.max(Theme.touch, (root.width - root.headWidth - root.columns * 2) / root.columns)

    signal picked(string cost, string price)

    spacing: Theme.gapTiny

    Measure {
        id: measure
    }

    SectionLabel {
        text: qsTr("Around your numbers: larvae per m²")
        Layout.fillWidth: true
    }

    Words {
        text: qsTr("Down: cost in %1. Across: price in %2. ▲ above the threshold, ▽ below, ● too close. Touch a number to take it.").arg(root.grid.costUnit).arg(root.grid.priceUnit)
        kind: "soft"
        Layout.fillWidth: true
    }

    Flickable {
        id: flick
        clip: true
        contentWidth: table.width
        flickableDirection: Flickable.HorizontalFlick
        boundsBehavior: Flickable.StopAtBounds
        Layout.fillWidth: true
        Layout.preferredHeight: table.height

        Column {
            id: table
            spacing: 2

            Row {
                spacing: 2

                Item {
                    width: root.headWidth
                    height: 1
                }

                // qmllint disable unqualified
                Repeater {
                    model: root.grid.prices

                    Words {
                        required property string modelData
                        width: root.cellWidth
                        text: modelData
                        kind: "soft"
                        horizontalAlignment: Text.AlignHCenter
                        wrapMode: Text.NoWrap
                    }
                }
                // qmllint enable unqualified
            }

            Grid {
                columns: 2
                spacing: 2

                Column {
                    spacing: 2

                    // qmllint disable unqualified
                    Repeater {
                        model: root.grid.costs

                        Words {
                            required property string modelData
                            width: root.headWidth
                            height: Theme.touch
                            text: modelData
                            kind: "soft"
                            verticalAlignment: Text.AlignVCenter
                            wrapMode: Text.NoWrap
                        }
                    }
                    // qmllint enable unqualified
                }

                Grid {
                    columns: root.columns
                    spacing: 2

                    Repeater {
                        model: root.grid

                        PressButton {
                            id: cell
                            required property int index
                            required property string larvae
                            required property string verdict
                            required property string spoken
                            required property bool isOwn
                            objectName: "cell" + index
                            width: root.cellWidth
                            height: Theme.touch
                            horizontalPadding: 2
                            text: larvae + (verdict === "above" ? "▲" : verdict === "below" ? "▽" : verdict === "too_close" ? "●" : "")
                            fill: isOwn ? Theme.act : Theme.card
                            fillPressed: isOwn ? Theme.actPressed : Theme.cardPressed
                            words: isOwn ? Theme.actInk : Theme.ink
                            corner: Theme.radiusSmall
                            font.pixelSize: Theme.typeSmall
                            Accessible.name: spoken
                            onClicked: root.picked(root.grid.costs[Math.floor(index / root.columns)], root.grid.prices[index % root.columns])
                        }
                    }
                }
            }
        }
    }
}
