// SPDX-License-Identifier: MIT
// The places of the app along the bottom; the present one is bold under a bar.
import QtQuick
import QtQuick.Templates as T
import Duskrow.Theme

Item {
    id: root

    required property list<string> keys
    required property list<string> labels
    property string current: ""
    property list<string> marks: [] // a number on a tab, of what waits there; empty for none
    readonly property real tabNeed: measure.widest(root.labels, Theme.typeSmall) + Theme.gapSmall
    readonly property bool oneRow: root.tabNeed * root.labels.length <= root.width
    readonly property int columns: root.oneRow ? root.labels.length : Math.ceil(root.labels.length / 2)
    readonly property int wordsHeight: Math.ceil(Theme.typeSmall * 1.4)
    readonly property int tabHeight: Math.max(Theme.touchWide, root.wordsHeight + Theme.gap + Theme.gapSmall)

    // Where the longest word is wider than its tab all shrink alike, though never below what can be read.
    readonly property real cell: root.width / root.columns - Theme.gapSmall
    readonly property real fit: Math.min(1, root.cell / Math.max(1, measure.widest(root.labels, Theme.typeSmall)))

    signal picked(string key)

    implicitWidth: 280
    implicitHeight: root.tabHeight * (root.oneRow ? 1 : 2)

    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    Measure {
        id: measure
    }

    // qmllint disable unqualified
    Each {
        id: tabs
        model: root.labels

        T.Button {
            id: tab

            required property string modelData
            required property int index
            readonly property string mark: root.marks[tab.index] ?? ""
            readonly property bool isCurrent: root.keys[tab.index] === root.current

            readonly property real wordsWidth: measure.width(tab.text, Theme.typeSmall) * root.fit

            function step(by: int): void {
                const other = tabs.itemAt(tab.index + by);
                if (other)
                    other.forceActiveFocus(Qt.TabFocusReason);
            }

            objectName: "tab_" + (root.keys[tab.index] ?? "")
            text: tab.modelData
            x: (tab.index % root.columns) * width
            y: Math.floor(tab.index / root.columns) * height
            width: root.width / root.columns
            height: root.tabHeight
            focusPolicy: Qt.StrongFocus
            onClicked: root.picked(root.keys[tab.index])

            Accessible.role: Accessible.PageTab
            Accessible.name: tab.mark.length > 0 ? qsTr("%1, %2 to decide").arg(tab.text).arg(tab.mark) : tab.text
            Accessible.selected: tab.isCurrent
            Accessible.onPressAction: tab.clicked()

            Keys.onReturnPressed: tab.clicked()
            Keys.onEnterPressed: tab.clicked()
            Keys.onRightPressed: tab.step(1)
            Keys.onLeftPressed: tab.step(-1)

            background: Item {
                Rectangle {
                    anchors.horizontalCenter: parent.horizontalCenter
                    y: Theme.gapTiny
                    width: 28
                    height: Theme.bar
                    radius: Theme.bar / 2
                    color: Theme.ink
                    visible: tab.isCurrent
                }

                Rectangle {
                    objectName: "mark"
                    visible: tab.mark.length > 0
                    x: Math.min(parent.width - width, (parent.width + tab.wordsWidth) / 2 + Theme.gapTiny)
                    anchors.verticalCenter: parent.verticalCenter
                    width: Math.max(height, measure.width(tab.mark, Theme.typeLeast) + Theme.gap)
                    height: Math.ceil(Theme.typeLeast * 1.4)
                    radius: height / 2
                    color: Theme.next

                    Words {
                        anchors.centerIn: parent
                        text: tab.mark
                        color: Theme.nextInk
                        font.pixelSize: Theme.typeLeast
                        font.weight: Font.Bold
                        wrapMode: Text.NoWrap
                        Accessible.ignored: true
                    }
                }

                FocusRing {
                    shown: tab.visualFocus
                    inner: Theme.radiusSmall
                    gap: -2 * Theme.ring
                }
            }

            contentItem: Words {
                text: tab.text
                kind: tab.isCurrent ? "small" : "soft"
                font.pixelSize: Math.max(Theme.typeLeast, Math.floor(Theme.typeSmall * root.fit))
                font.weight: tab.isCurrent ? Font.Bold : Font.Normal
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
    // qmllint enable unqualified
}
