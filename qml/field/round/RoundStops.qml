// SPDX-License-Identifier: MIT
// The stops in their order, to be opened, moved, or handed to the phone's map; and those that are done.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property RoundViewModel model
    property bool isChanging: false
    property bool mapFailed: false

    signal opened(string route, string subject)

    function showOnMap(place: url): void {
        root.mapFailed = !Qt.openUrlExternally(place);
    }

    spacing: Theme.gap

    NoticeBar {
        objectName: "coolBox"
        visible: text.length > 0
        text: root.model.coolBoxLine
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "noMap"
        visible: root.mapFailed
        kind: "caution"
        text: qsTr("No map on this device takes a place. The file of the stops can be carried to one that does.")
        Layout.fillWidth: true
    }

    EmptyState {
        objectName: "noStops"
        visible: root.model.isKnown && root.model.stops.count === 0 && root.model.done.count === 0
        title: qsTr("No stop today")
        text: qsTr("Traps to be seen to and fields to be scouted stand here on their day.")
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapWide
    }

    Words {
        objectName: "orderLine"
        visible: text.length > 0
        text: root.model.orderLine
        kind: "strong"
        Layout.fillWidth: true
    }

    Words {
        objectName: "lengthLine"
        visible: text.length > 0
        text: root.model.lengthLine
        kind: "soft"
        Layout.fillWidth: true
    }

    Flow {
        visible: root.model.stops.count > 1
        spacing: Theme.gapSmall
        Layout.fillWidth: true

        PlainButton {
            objectName: "change"
            width: Math.min(implicitWidth, parent.width)
            text: root.isChanging ? qsTr("Done changing") : qsTr("Change")
            Accessible.name: root.isChanging ? qsTr("Done changing") : qsTr("Change the order, or mark infested fields")
            onClicked: root.isChanging = !root.isChanging
        }

        PlainButton {
            objectName: "suggestAgain"
            visible: root.model.isHandOrder
            width: Math.min(implicitWidth, parent.width)
            text: qsTr("Suggest again")
            onClicked: root.model.suggestAgain()
        }
    }

    // qmllint disable unqualified
    Each {
        model: root.model.stops

        RoundStopCard {
            required property int index
            objectName: "stop" + index
            isChanging: root.isChanging
            isFirst: index === 0
            isLast: index === root.model.stops.count - 1
            Layout.fillWidth: true
            onOpened: (route, subject) => root.opened(route, subject)
            onMapWanted: place => root.showOnMap(place)
            onMoveWanted: (key, by) => root.model.move(key, by)
            onMarkWanted: (key, isInfested) => root.model.setInfested(key, isInfested)
        }
    }

    SectionLabel {
        objectName: "doneLabel"
        visible: root.model.done.count > 0
        text: qsTr("Done")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.done

        ListCard {
            required property int index
            required property string detail
            required property string route
            required property string subject
            objectName: "done" + index
            subtitle: detail
            Layout.fillWidth: true
            onClicked: root.opened(route, subject)
        }
    }
    // qmllint enable unqualified
}
