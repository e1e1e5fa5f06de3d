// SPDX-License-Identifier: MIT
// One stop of the round. A touch opens the work there; while the order is changed, keys move it.
import QtQuick
import Duskrow.Parts
import Duskrow.Theme

ListCard {
    id: root

    required property string key
    required property string line
    required property string way
    required property string route
    required property string subject
    required property url map
    required property bool isInfested
    property bool isChanging: false
    property bool isFirst: false
    property bool isLast: false

    signal opened(string route, string subject)
    signal mapWanted(url place)
    signal moveWanted(string key, int by)
    signal markWanted(string key, bool isInfested)

    subtitle: root.line
    chevron: false
    Accessible.name: root.title + root.listed(root.line) + (root.isInfested ? root.listed(qsTr("infested field")) : "")
    Accessible.description: root.way
    onClicked: root.opened(root.route, root.subject)

    Words {
        objectName: "way"
        visible: text.length > 0
        width: parent.width
        text: root.way
        kind: "small"
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }

    Words {
        objectName: "infested"
        visible: root.isInfested
        width: parent.width
        text: qsTr("Infested field")
        kind: "small"
        font.weight: Font.DemiBold
        Accessible.ignored: true
    }

    ToggleRow {
        objectName: "mark"
        visible: root.isChanging
        width: parent.width
        text: qsTr("This field is infested")
        Accessible.name: qsTr("%1: this field is infested").arg(root.title)
        checked: root.isInfested
        onToggled: root.markWanted(root.key, checked)
    }

    Flow {
        width: parent.width
        topPadding: Theme.gapSmall
        spacing: Theme.gapSmall

        PlainButton {
            objectName: "up"
            visible: root.isChanging
            enabled: !root.isFirst
            leastHeight: Theme.touch
            text: qsTr("Earlier")
            Accessible.name: qsTr("%1: earlier").arg(root.title)
            onClicked: root.moveWanted(root.key, -1)
        }

        PlainButton {
            objectName: "down"
            visible: root.isChanging
            enabled: !root.isLast
            leastHeight: Theme.touch
            text: qsTr("Later")
            Accessible.name: qsTr("%1: later").arg(root.title)
            onClicked: root.moveWanted(root.key, 1)
        }

        PlainButton {
            objectName: "map"
            visible: !root.isChanging && String(root.map).length > 0
            leastHeight: Theme.touch
            text: qsTr("Map")
            Accessible.name: qsTr("%1: show it on the phone's map").arg(root.title)
            onClicked: root.mapWanted(root.map)
        }
    }
}
