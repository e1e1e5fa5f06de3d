// SPDX-License-Identifier: MIT
// Beside the map: the trap that is chosen, the week, what is shown between the traps, the key, overlays and the file.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Paint
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property MapViewModel model

    signal opened(string route, string subject)
    signal writeWanted(string folder)

    spacing: Theme.gap

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    MapTrapCard {
        objectName: "trapCard"
        model: root.model
        Layout.fillWidth: true
        onOpened: (route, subject) => root.opened(route, subject)
    }

    Card {
        Layout.fillWidth: true

        Words {
            objectName: "weekLine"
            text: root.model.weekLine
            kind: "strong"
            visible: text.length > 0
            Layout.fillWidth: true
        }

        StepSlider {
            objectName: "weeks"
            label: qsTr("Week")
            spoken: root.model.weekLine
            last: root.model.weeks - 1
            value: root.model.week
            Layout.fillWidth: true
            onStepped: week => root.model.week = week
        }

        Words {
            objectName: "standing"
            text: root.model.standing
            kind: "soft"
            Layout.fillWidth: true
        }
    }

    ChoiceChips {
        objectName: "kinds"
        visible: root.model.kindKeys.length > 1
        label: qsTr("Pest and trap")
        keys: root.model.kindKeys
        labels: root.model.kindNames
        chosen: root.model.kind
        Layout.fillWidth: true
        onPicked: key => root.model.kind = key
    }

    ChoiceChips {
        objectName: "edges"
        visible: root.model.edgeKeys.length > 1
        label: qsTr("Between the traps, the chance of more than")
        keys: root.model.edgeKeys
        labels: root.model.edgeNames
        chosen: root.model.edge
        Layout.fillWidth: true
        onPicked: key => root.model.edge = key
    }

    Words {
        objectName: "surfaceLine"
        visible: text.length > 0
        text: root.model.surfaceLine
        kind: "soft"
        Layout.fillWidth: true
    }

    Card {
        id: keyCard
        objectName: "keyCard"
        Layout.fillWidth: true

        PictureItem {
            objectName: "key"
            picture: root.model.key(keyCard.width - 2 * keyCard.padding, Theme.textScale, root.model.revision)
            dark: Theme.dark
            fontFamily: Theme.family
            Layout.fillWidth: true
            Layout.preferredHeight: Math.max(1, root.model.keyHeight(keyCard.width - 2 * keyCard.padding, Theme.textScale, root.model.revision))

            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("Key of the map")
        }
    }

    MapOverlays {
        objectName: "overlays"
        model: root.model
        Layout.fillWidth: true
    }

    MapSave {
        objectName: "save"
        model: root.model
        Layout.fillWidth: true
        onWriteWanted: folder => root.writeWanted(folder)
    }

    Words {
        text: qsTr("Keys: arrows move the map, + and − go nearer and farther, 0 shows all, N and P go from trap to trap, Enter opens one, [ and ] change the week.")
        kind: "soft"
        Layout.fillWidth: true
    }
}
