// SPDX-License-Identifier: MIT
// Ten digits, large enough for a glove. Digits from a keyboard count as well; it never holds more than nine.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

FocusScope {
    id: root

    required property string label
    property string digits: ""
    property string doneText: qsTr("Done")
    readonly property int maximumDigits: 9

    signal accepted(int value)

    function press(key: string): void {
        if (key === "⌫")
            root.digits = root.digits.slice(0, -1);
        else if (key === "C")
            root.digits = "";
        else if (root.digits === "0")
            root.digits = key;
        else if (root.digits.length < root.maximumDigits)
            root.digits += key;
    }

    function keyName(key: string): string {
        if (key === "⌫")
            return qsTr("Delete the last digit");
        return key === "C" ? qsTr("Clear the number") : qsTr("Digit %1").arg(key);
    }

    function done(): void {
        if (root.digits.length > 0)
            root.accepted(Number(root.digits));
    }

    implicitWidth: 320
    implicitHeight: column.implicitHeight

    Keys.onPressed: event => {
        if (event.key >= Qt.Key_0 && event.key <= Qt.Key_9)
            root.press(String(event.key - Qt.Key_0));
        else if (event.key === Qt.Key_Backspace)
            root.press("⌫");
        else if (event.key === Qt.Key_Delete)
            root.press("C");
        else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter)
            root.done();
        else
            return;
        event.accepted = true;
    }

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        spacing: Theme.gapSmall

        Words {
            text: root.label
            kind: "soft"
            horizontalAlignment: Text.AlignHCenter
            Layout.fillWidth: true
        }

        Words {
            objectName: "digits"
            text: root.digits.length > 0 ? Number(root.digits).toLocaleString(Qt.locale(), "f", 0) : "–"
            font.pixelSize: Math.round(56 * Math.min(Theme.textScale, 1.5))
            font.weight: Font.Bold
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.typeTitle
            horizontalAlignment: Text.AlignHCenter
            wrapMode: Text.NoWrap
            Layout.fillWidth: true
            Accessible.name: root.digits.length > 0 ? root.digits : qsTr("no number yet")
        }

        GridLayout {
            columns: 3
            columnSpacing: Theme.gapSmall
            rowSpacing: Theme.gapSmall
            Layout.fillWidth: true

            // qmllint disable unqualified
            Each {
                model: ["1", "2", "3", "4", "5", "6", "7", "8", "9", "C", "0", "⌫"]

                PressButton {
                    required property string modelData
                    objectName: "key_" + (modelData === "⌫" ? "delete" : modelData)
                    text: modelData === "⌫" ? "" : modelData
                    implicitHeight: Theme.touchWide
                    font.pixelSize: Math.round(24 * Math.min(Theme.textScale, 1.5))
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    Accessible.name: root.keyName(modelData)
                    onClicked: root.press(modelData)

                    DeleteMark {
                        visible: parent.text.length === 0
                        anchors.centerIn: parent
                    }
                }
            }
            // qmllint enable unqualified
        }

        ActButton {
            objectName: "key_done"
            text: root.doneText
            enabled: root.digits.length > 0
            Layout.fillWidth: true
            onClicked: root.done()
        }
    }
}
