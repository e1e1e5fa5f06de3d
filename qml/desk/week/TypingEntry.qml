// SPDX-License-Identifier: MIT
// One trap to type a count for. Enter keeps it and goes on, arrows go up and down, Tab goes to who reported.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

Item {
    id: root

    required property int index
    required property string title
    required property string pest
    required property string animal
    required property string typed
    required property string who
    required property string error
    required property string kept
    required property bool keeping
    property list<string> reasonKeys
    property list<string> reasonLabels
    property bool asksWhy: false
    readonly property bool isOpen: root.kept.length === 0
    readonly property bool beside: root.width >= 760 * Theme.textScale
    readonly property bool isAtHand: count.activeFocus || reporter.activeFocus || none.activeFocus || root.asksWhy

    signal countTyped(string words)
    signal whoTyped(string words)
    signal accepted
    signal noCount(string reason)
    signal moved(int by)

    function takeFocus(): void {
        count.forceActiveFocus(Qt.TabFocusReason);
        count.selectAll();
    }

    objectName: "row" + root.index
    implicitHeight: grid.implicitHeight + 2 * Theme.gapSmall

    onTypedChanged: if (count.text !== root.typed)
        count.text = root.typed
    onWhoChanged: if (reporter.text !== root.who)
        reporter.text = root.who

    GridLayout {
        id: grid
        y: Theme.gapSmall
        width: root.width
        columns: root.beside ? 4 : 2
        columnSpacing: Theme.gapSmall
        rowSpacing: Theme.gapTiny

        ColumnLayout {
            spacing: 0
            Layout.columnSpan: root.beside ? 1 : 2
            Layout.fillWidth: true
            Layout.preferredWidth: 1

            Words {
                objectName: "title"
                text: root.title
                kind: "strong"
                Layout.fillWidth: true
            }

            Words {
                objectName: "below"
                visible: text.length > 0
                text: root.isOpen ? root.pest : root.kept
                kind: root.isOpen ? "soft" : "small"
                Layout.fillWidth: true
            }
        }

        EntryBox {
            id: count
            objectName: "count"
            visible: root.isOpen
            readOnly: root.keeping
            text: root.typed
            bad: root.error.length > 0
            maximumLength: 40
            inputMethodHints: Qt.ImhDigitsOnly
            Layout.preferredWidth: 110 * Theme.textScale
            onTextEdited: root.countTyped(count.text)

            Accessible.name: qsTr("%1 at %2", "moths, a trap").arg(root.animal.charAt(0).toUpperCase() + root.animal.slice(1)).arg(root.title)
            Accessible.description: root.error
            Keys.onReturnPressed: root.accepted()
            Keys.onEnterPressed: root.accepted()
            Keys.onUpPressed: root.moved(-1)
            Keys.onDownPressed: root.moved(1)

            Words {
                x: count.leftPadding
                anchors.verticalCenter: parent.verticalCenter
                visible: count.length === 0 && count.preeditText.length === 0
                text: root.animal
                kind: "soft"
                Accessible.ignored: true
            }
        }

        EntryBox {
            id: reporter
            objectName: "who"
            visible: root.isOpen
            readOnly: root.keeping
            text: root.who
            maximumLength: 200
            inputMethodHints: Qt.ImhNoPredictiveText
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.maximumWidth: root.beside ? 240 * Theme.textScale : root.width
            onTextEdited: root.whoTyped(reporter.text)

            Accessible.name: qsTr("Who reported for %1").arg(root.title)
            Keys.onReturnPressed: root.accepted()
            Keys.onEnterPressed: root.accepted()

            Words {
                x: reporter.leftPadding
                anchors.verticalCenter: parent.verticalCenter
                visible: reporter.length === 0 && reporter.preeditText.length === 0
                text: qsTr("who reported")
                kind: "soft"
                Accessible.ignored: true
            }
        }

        PlainButton {
            id: none
            objectName: "none"
            // Where there is no room beside, only the row at hand has it: the others stay short.
            visible: root.isOpen && (root.beside || root.isAtHand)
            enabled: !root.keeping
            text: root.asksWhy ? qsTr("It was counted") : qsTr("No count")
            leastHeight: Theme.touch
            Layout.columnSpan: root.beside ? 1 : 2
            Layout.alignment: Qt.AlignRight
            Layout.preferredWidth: root.beside ? 160 * Theme.textScale : none.implicitWidth // alike in every row
            onClicked: root.asksWhy = !root.asksWhy

            Accessible.name: qsTr("%1 at %2", "no count, a trap").arg(none.text).arg(root.title)
        }

        ChoiceChips {
            id: reasons
            objectName: "reasons"
            visible: root.isOpen && root.asksWhy
            label: qsTr("Why there is no count")
            keys: root.reasonKeys
            labels: root.reasonLabels
            Layout.columnSpan: root.beside ? 4 : 2
            Layout.fillWidth: true
            onPicked: reason => root.noCount(reason)
        }

        FieldError {
            text: root.error
            Layout.columnSpan: root.beside ? 4 : 2
            Layout.fillWidth: true
        }
    }

    Rectangle {
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: Theme.hairline
        color: Theme.line
    }
}
