// SPDX-License-Identifier: MIT
// Outlines as long as a larva on the edge of each size class, to hold one against. True to life where the
// screen knows its own measure.
import QtQuick
import QtQuick.Window
import Duskrow.Theme

Item {
    id: root

    required property list<real> edges // mm, ascending
    readonly property real perMm: Screen.pixelDensity > 1 ? Screen.pixelDensity : 6.3
    readonly property real most: root.edges.length > 0 ? root.edges[root.edges.length - 1] : 0
    // A screen too narrow for life size shrinks all alike, and says so.
    readonly property real fit: Math.min(1, (root.width * 0.55) / Math.max(1, root.most * root.perMm))

    function spoken(): string {
        let words = "";
        for (let i = 0; i < root.edges.length; ++i)
            words += (i > 0 ? ", " : "") + qsTr("%1 mm").arg(root.edges[i]);
        return words;
    }

    implicitWidth: 200
    implicitHeight: column.implicitHeight

    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("Outlines of larvae, as long as in life: %1").arg(root.spoken())

    Column {
        id: column
        width: root.width
        spacing: Theme.gapTiny

        // qmllint disable unqualified
        Each {
            model: root.edges

            Item {
                id: row
                required property real modelData
                width: column.width
                height: Math.max(outline.height, words.implicitHeight)

                LarvaOutline {
                    id: outline
                    anchors.verticalCenter: parent.verticalCenter
                    width: row.modelData * root.perMm * root.fit
                    height: Math.max(8, Math.min(16, width / 6))
                    filled: false
                }

                Words {
                    id: words
                    x: outline.width + Theme.gapSmall
                    width: row.width - x
                    anchors.verticalCenter: parent.verticalCenter
                    text: root.fit < 1 ? qsTr("%1 mm, drawn smaller").arg(row.modelData) : qsTr("%1 mm, life size").arg(row.modelData)
                    kind: "soft"
                    Accessible.ignored: true
                }
            }
        }
        // qmllint enable unqualified
    }
}
