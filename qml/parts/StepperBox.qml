// SPDX-License-Identifier: MIT
// A box to type into, between a key for less and one for more; in large type the keys go below it.
import QtQuick
import Duskrow.Theme

Item {
    id: root

    required property string name
    required property string lessName
    required property string moreName
    property alias text: box.text
    property alias inputMethodHints: box.inputMethodHints
    property string description: ""
    property string sample: "00000"
    property string unit: ""
    property real step: 1
    property int decimals: 0
    property int pixelSize: Theme.typeTitle
    property bool bad: false
    property bool canLess: true
    property bool canMore: true
    property string lessObject: "minus"
    property string moreObject: "plus"
    readonly property real keyWidth: Math.max(less.implicitWidth, more.implicitWidth)
    readonly property real unitRoom: root.unit.length > 0 ? unitWords.implicitWidth + Theme.gap : 0
    readonly property real sides: 2 * Math.max(Theme.gap, root.unitRoom + Theme.gapTiny)
    readonly property real boxNeed: measure.width(root.sample, root.pixelSize) + root.sides
    readonly property bool stacked: root.boxNeed + 2 * root.keyWidth + 2 * Theme.gapSmall > root.width

    signal typed(string text)
    signal stepped(int direction)
    signal finished

    function takeFocus(): void {
        box.forceActiveFocus(Qt.TabFocusReason);
    }

    implicitWidth: 200
    implicitHeight: root.stacked ? less.y + less.height : Math.max(box.implicitHeight, less.implicitHeight)

    Measure {
        id: measure
    }

    StepKey {
        id: less
        objectName: root.lessObject
        y: root.stacked ? box.height + Theme.gapSmall : 0
        width: root.stacked ? (root.width - Theme.gapSmall) / 2 : root.keyWidth
        height: implicitHeight
        by: -root.step
        decimals: root.decimals
        enabled: root.canLess
        Accessible.name: root.lessName
        onStepped: root.stepped(-1)
    }

    EntryBox {
        id: box
        objectName: "box"
        x: root.stacked ? 0 : root.keyWidth + Theme.gapSmall
        width: root.width - 2 * x
        height: Math.max(implicitHeight, less.implicitHeight)
        bad: root.bad
        font.pixelSize: root.pixelSize
        font.weight: Font.DemiBold
        horizontalAlignment: TextInput.AlignHCenter
        leftPadding: Math.max(Theme.gapSmall, root.unitRoom)
        rightPadding: leftPadding
        maximumLength: 24
        onTextEdited: root.typed(box.text)
        onActiveFocusChanged: {
            if (box.activeFocus)
                box.selectAll();
            else
                root.finished();
        }

        Accessible.name: root.name
        Accessible.description: root.description

        Keys.onUpPressed: root.stepped(1)
        Keys.onDownPressed: root.stepped(-1)

        Words {
            id: unitWords
            anchors.right: parent.right
            anchors.rightMargin: Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            visible: text.length > 0
            text: root.unit
            kind: "soft"
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }

    StepKey {
        id: more
        objectName: root.moreObject
        x: root.width - width
        y: less.y
        width: less.width
        height: less.height
        by: root.step
        decimals: root.decimals
        enabled: root.canMore
        Accessible.name: root.moreName
        onStepped: root.stepped(1)
    }
}
