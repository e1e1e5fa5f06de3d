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
    readonly property int air: 2
    // The own column in the middle, and as many to either side as there is room for.
    readonly property real need: Math.max(Theme.touch, measure.width("000▲", Theme.typeSmall) + 6)
    readonly property int room: Math.max(1, Math.floor((root.width - root.headWidth) / (root.need + root.air)))
    readonly property int aside: Math.min(Math.floor((root.columns - 1) / 2), Math.floor((root.room - 1) / 2))
    readonly property int shown: 2 * root.aside + 1
    readonly property real cellWidth: (root.width - root.headWidth - root.shown * root.air) / root.shown
    readonly property real cellHeight: Math.max(Theme.touch, Math.ceil(Theme.typeSmall * 1.6))

    property int drawnTo: -1 // the cell under a drawn finger

    signal picked(string cost, string price)

    function take(cell: int): void {
        root.picked(root.grid.costs[Math.floor(cell / root.columns)], root.grid.prices[cell % root.columns]);
    }

    function cellAt(at: point): int {
        const across = Math.max(0, Math.min(root.shown - 1, Math.floor(at.x / (root.cellWidth + root.air))));
        const down = Math.max(0, Math.min(root.grid.costs.length - 1, Math.floor(at.y / (root.cellHeight + root.air))));
        return down * root.columns + Math.floor((root.columns - 1) / 2) - root.aside + across;
    }

    function isShown(column: int): bool {
        return Math.abs(column - Math.floor((root.columns - 1) / 2)) <= root.aside;
    }

    function sign(verdict: string): string {
        switch (verdict) {
        case "above":
            return "▲";
        case "below":
            return "▽";
        case "too_close":
            return "●";
        default:
            return "";
        }
    }

    spacing: Theme.gapTiny

    Measure {
        id: measure
    }

    SectionLabel {
        text: qsTr("Around your numbers: larvae per m²")
        Layout.fillWidth: true
    }

    Words {
        text: qsTr("Down: cost in %1. Across: price in %2. ▲ above the threshold, ▽ below, ● too close. Touch a number to take it, or draw the dark one there.").arg(root.grid.costUnit).arg(root.grid.priceUnit)
        kind: "soft"
        Layout.fillWidth: true
    }

    // In an item of its own, since cells as wide as there is room for must not ask for that room.
    Item {
        implicitHeight: sheet.height
        Layout.fillWidth: true

        Column {
            id: sheet
            spacing: root.air

            Grid {
                id: table
                columns: root.shown + 1
                spacing: root.air

                Item {
                    width: root.headWidth
                    height: 1
                }

                // qmllint disable unqualified
                Each {
                    model: root.grid.prices

                    Words {
                        required property string modelData
                        required property int index
                        visible: root.isShown(index)
                        width: root.cellWidth
                        text: modelData
                        kind: "soft"
                        horizontalAlignment: Text.AlignHCenter
                        wrapMode: Text.NoWrap
                    }
                }
                // qmllint enable unqualified
            }

            Row {
                spacing: root.air

                Column {
                    spacing: root.air

                    // qmllint disable unqualified
                    Each {
                        model: root.grid.costs

                        Words {
                            required property string modelData
                            width: root.headWidth
                            height: root.cellHeight
                            text: modelData
                            kind: "soft"
                            verticalAlignment: Text.AlignVCenter
                            wrapMode: Text.NoWrap
                        }
                    }
                    // qmllint enable unqualified
                }

                Grid {
                    id: cells
                    columns: root.shown
                    spacing: root.air

                    Each {
                        model: root.grid

                        PressButton {
                            id: cell
                            required property int index
                            required property string larvae
                            required property string verdict
                            required property string spoken
                            required property bool isOwn
                            objectName: "cell" + cell.index
                            visible: root.isShown(cell.index % root.columns)
                            width: root.cellWidth
                            height: root.cellHeight
                            horizontalPadding: 2
                            text: cell.larvae + root.sign(cell.verdict)
                            fill: cell.isOwn ? Theme.act : root.drawnTo === cell.index ? Theme.groundCaution : Theme.card
                            fillPressed: cell.isOwn ? Theme.actPressed : Theme.cardPressed
                            words: cell.isOwn ? Theme.actInk : Theme.ink
                            corner: Theme.radiusSmall
                            font.pixelSize: Theme.typeSmall
                            Accessible.name: cell.spoken
                            onClicked: root.take(cell.index)

                            // The own point can be drawn to another cell; elsewhere a finger scrolls the page.
                            DragHandler {
                                enabled: cell.isOwn
                                target: null
                                dragThreshold: 6
                                grabPermissions: PointerHandler.CanTakeOverFromAnything
                                onCentroidChanged: {
                                    if (active)
                                        root.drawnTo = root.cellAt(cell.mapToItem(cells, centroid.position));
                                }
                                onActiveChanged: {
                                    const to = root.drawnTo;
                                    root.drawnTo = -1;
                                    if (!active && to >= 0)
                                        root.take(to);
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}
