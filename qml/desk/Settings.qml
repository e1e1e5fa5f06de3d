// SPDX-License-Identifier: MIT
// How this device shows the app and where it finds its position. Nothing here is part of the programme.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property DeviceSettings settings
    required property string storePath
    property string subject
    readonly property list<string> sizes: ["100", "125", "150", "175", "200"]

    title: qsTr("Settings of this device")

    ChoiceChips {
        objectName: "light"
        label: qsTr("Light")
        keys: ["0", "1", "2"]
        labels: [qsTr("as the device"), qsTr("day"), qsTr("night")]
        chosen: String(root.settings.light)
        Layout.fillWidth: true
        onPicked: key => root.settings.light = Number(key)
    }

    ChoiceChips {
        objectName: "size"
        label: qsTr("Size of type")
        keys: root.sizes
        labels: root.sizes.map(size => qsTr("%1 %").arg(size))
        chosen: String(Math.round(root.settings.textScale * 100))
        Layout.fillWidth: true
        onPicked: key => root.settings.textScale = Number(key) / 100
    }

    Card {
        Layout.fillWidth: true

        Words {
            text: qsTr("47 moths")
            kind: "head"
            Layout.fillWidth: true
        }

        Words {
            text: qsTr("This is how the screens read.")
            Layout.fillWidth: true
        }
    }

    FieldText {
        objectName: "positionLog"
        label: qsTr("Position from a file")
        hint: qsTr("An NMEA log in place of the receiver, for a device that has none. Empty: the receiver.")
        text: root.settings.positionLog
        maximumLength: 1000
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        Layout.fillWidth: true
        onEdited: text => logPath.typed = text
        onAccepted: logPath.take()

        QtObject {
            id: logPath
            property string typed: root.settings.positionLog

            function take(): void {
                root.settings.positionLog = logPath.typed.trim();
            }
        }
    }

    PlainButton {
        objectName: "takeLog"
        visible: logPath.typed.trim() !== root.settings.positionLog
        text: qsTr("Use this file")
        Layout.fillWidth: true
        onClicked: logPath.take()
    }

    Card {
        Layout.fillWidth: true

        FactRow {
            label: qsTr("Language")
            value: qsTr("English", "what the language of the screens calls itself")
            Layout.fillWidth: true
        }

        FactRow {
            objectName: "storePath"
            label: qsTr("Everything kept lies in")
            value: root.storePath
            Layout.fillWidth: true
        }
    }
}
