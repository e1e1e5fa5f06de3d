// SPDX-License-Identifier: MIT
// The flight of the trap or of its district: the fan, its phase, its ranges, and how it was worked out.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Paint
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property PestCalendarViewModel model

    spacing: Theme.gap

    ChoiceChips {
        objectName: "whose"
        visible: root.model.hasDistrict
        label: qsTr("Flight of")
        keys: ["trap", "district"]
        labels: [qsTr("This trap"), qsTr("District: %1").arg(root.model.district)]
        chosen: root.model.whose
        Layout.fillWidth: true
        onPicked: key => root.model.whose = key
    }

    ChoiceChips {
        objectName: "axis"
        visible: root.model.hasWarmth
        label: qsTr("Over")
        keys: ["days", "warmth"]
        labels: [qsTr("Days"), qsTr("Degree-days")]
        chosen: root.model.axis
        Layout.fillWidth: true
        onPicked: key => root.model.axis = key
    }

    Words {
        objectName: "working"
        visible: root.model.isWorking
        text: qsTr("Working out the flight of all traps …")
        kind: "soft"
        Layout.fillWidth: true
    }

    Words {
        objectName: "flightTitle"
        visible: text.length > 0
        text: root.model.flightTitle
        kind: "head"
        Layout.fillWidth: true
    }

    PictureItem {
        id: fan
        objectName: "fan"
        visible: root.model.flightTitle.length > 0
        picture: root.model.fan(width, height, Theme.textScale, root.model.revision)
        dark: Theme.dark
        fontFamily: Theme.family
        Layout.fillWidth: true
        Layout.preferredHeight: Math.round(Math.min(width, 420) * (Theme.textScale > 1.4 ? 1.25 : 1.05))

        Accessible.role: Accessible.Graphic
        Accessible.name: picture.description
    }

    Words {
        objectName: "fanKey"
        visible: fan.visible
        text: qsTr("Inner band: half of all chances. Outer band: nine in ten. Hatched and dashed: after the last count, expected only.")
        kind: "soft"
        Layout.fillWidth: true
    }

    Card {
        objectName: "flightLines"
        visible: root.model.flightLines.length > 0
        Layout.fillWidth: true

        // qmllint disable unqualified
        Each {
            model: root.model.flightLines

            Words {
                required property string modelData
                required property int index
                objectName: "flightLine" + index
                text: modelData
                Layout.fillWidth: true
            }
        }
        // qmllint enable unqualified
    }

    // qmllint disable unqualified
    Each {
        model: root.model.flightMethod

        Words {
            required property string modelData
            required property int index
            objectName: "method" + index
            text: modelData
            kind: "soft"
            Layout.fillWidth: true
        }
    }
    // qmllint enable unqualified
}
