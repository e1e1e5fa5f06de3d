// SPDX-License-Identifier: MIT
// The day's round: the stops in an order to go, what to think of before one goes, and a file of the stops.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property string subject
    required property RoundViewModel model
    property string shown: "stops"

    signal opened(string route, string subject)

    title: root.model.heading
    above: root.model.date
    onVisibleChanged: {
        if (root.visible)
            root.model.refresh();
    }

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "shown"
        label: qsTr("Show")
        labelShown: false
        keys: ["stops", "before", "order"]
        labels: [qsTr("Stops"), qsTr("Prepare"), qsTr("Order")]
        chosen: root.shown
        Layout.fillWidth: true
        onPicked: key => root.shown = key
    }

    RoundStops {
        objectName: "stopsPart"
        visible: root.shown === "stops"
        model: root.model
        Layout.fillWidth: true
        onOpened: (route, subject) => root.opened(route, subject)
    }

    RoundBefore {
        objectName: "beforePart"
        visible: root.shown === "before"
        model: root.model
        Layout.fillWidth: true
    }

    RoundOrder {
        objectName: "orderPart"
        visible: root.shown === "order"
        model: root.model
        Layout.fillWidth: true
    }
}
