// SPDX-License-Identifier: MIT
// What is seen of the region: moved by a drag, nearer by wheel, pinch, buttons and keys; a touch chooses a trap.
import QtQuick
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

FocusScope {
    id: root

    required property MapViewModel model
    readonly property RegionMapItem map: item

    function nearer(factor: real): void {
        item.zoom(factor, item.width / 2, item.height / 2);
    }

    clip: true

    RegionMapItem {
        id: item
        objectName: "map"
        anchors.fill: parent
        focus: true
        activeFocusOnTab: true
        map: root.model
        dark: Theme.dark
        textScale: Math.min(Theme.textScale, 1.6)
        fontFamily: Theme.family

        Accessible.role: Accessible.Graphic
        Accessible.name: item.description
        Accessible.focusable: true

        DragHandler {
            property point from
            target: null
            acceptedButtons: Qt.LeftButton
            onActiveChanged: from = Qt.point(0, 0)
            onTranslationChanged: {
                item.pan(activeTranslation.x - from.x, activeTranslation.y - from.y);
                from = Qt.point(activeTranslation.x, activeTranslation.y);
            }
        }

        WheelHandler {
            onWheel: event => item.zoom(Math.pow(1.2, event.angleDelta.y / 120), event.x, event.y)
        }

        PinchHandler {
            property real last: 1
            target: null
            onActiveChanged: last = 1
            onUpdated: {
                item.zoom(activeScale / last, centroid.position.x, centroid.position.y);
                last = activeScale;
            }
        }

        TapHandler {
            onTapped: point => {
                item.forceActiveFocus();
                item.touch(point.position.x, point.position.y);
            }
        }
    }

    FocusRing {
        shown: item.activeFocus
        inner: 0
        gap: -2 * Theme.ring
    }

    Column {
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.margins: Theme.gap
        spacing: Theme.gapSmall

        // qmllint disable unqualified
        Repeater {
            model: [{
                    "name": "nearer",
                    "sign": "+",
                    "said": qsTr("Nearer"),
                    "factor": 1.5
                }, {
                    "name": "farther",
                    "sign": "−",
                    "said": qsTr("Farther"),
                    "factor": 1 / 1.5
                }, {
                    "name": "wholeRegion",
                    "sign": "◻",
                    "said": qsTr("Whole region"),
                    "factor": 0
                }]

            PressButton {
                required property var modelData
                objectName: modelData.name
                width: Theme.touch
                height: Theme.touch
                corner: Theme.radiusSmall
                edge: Theme.edge
                horizontalPadding: 0
                verticalPadding: 0
                font.pixelSize: 22
                text: modelData.sign
                Accessible.name: modelData.said
                onClicked: modelData.factor > 0 ? root.nearer(modelData.factor) : item.fit()
            }
        }
        // qmllint enable unqualified
    }
}
