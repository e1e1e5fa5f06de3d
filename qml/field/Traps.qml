// SPDX-License-Identifier: MIT
// Every trap of the season: found by name, sorted as one likes, ended ones last.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ListFrame {
    id: root

    required property TrapsViewModel traps
    readonly property bool isEmpty: root.traps.isKnown && root.traps.all === 0

    signal opened(string route, string subject)

    title: root.traps.isThisYear ? qsTr("Traps") : qsTr("Traps of %1").arg(root.traps.year)
    model: root.traps.traps
    sectionRole: "group"
    delegate: ListCard {
        required property string trap
        required property string line
        required property string aside
        required property string spokenAside
        objectName: "trapRow"
        width: root.columnWidth
        height: implicitHeight
        subtitle: line
        rightText: aside
        Accessible.name: title + ", " + line + (spokenAside ? ", " + spokenAside : "")
        onClicked: root.opened("season", trap)
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.traps.trouble.length > 0
        kind: "caution"
        text: root.traps.trouble
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "search"
        visible: root.traps.all > 5
        label: qsTr("Find a trap")
        text: root.traps.search
        maximumLength: 100
        inputMethodHints: Qt.ImhNoPredictiveText
        Layout.fillWidth: true
        onEdited: text => root.traps.search = text
    }

    ChoiceChips {
        objectName: "order"
        visible: root.traps.all > 3
        label: qsTr("Sorted by")
        labelShown: false
        keys: root.traps.hasPlace ? ["name", "distance", "catch"] : ["name", "catch"]
        //: what a list of traps is sorted by
        labels: root.traps.hasPlace ? [qsTr("name"), qsTr("nearest"), qsTr("catch")] : [qsTr("name"), qsTr("catch")]
        chosen: root.traps.order
        Layout.fillWidth: true
        onPicked: key => root.traps.order = key
    }

    EmptyState {
        objectName: "noTraps"
        visible: root.isEmpty
        title: qsTr("No trap yet")
        text: qsTr("Each trap stands here with its catch so far.")
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapWide
    }

    EmptyState {
        objectName: "noneFound"
        visible: root.traps.all > 0 && root.traps.traps.count === 0
        title: qsTr("No trap of that name")
        text: qsTr("Sites, fields and tags are searched.")
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "setUp"
            visible: root.traps.isThisYear
            text: qsTr("Set up a trap")
            Layout.fillWidth: true
            onClicked: root.opened("setup", "")
        }
    ]
}
