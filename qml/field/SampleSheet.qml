// SPDX-License-Identifier: MIT
// One sample: its trail and its next step.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

Sheet {
    id: root

    required property SamplesViewModel model
    readonly property string state: root.model.state
    property int pest: 0

    signal historyWanted
    signal visitWanted

    name: qsTr("Sample %1").arg(root.model.number)
    onAboutToShow: {
        root.pest = root.model.moths;
        sentTo.text = root.model.lastSentTo;
        namedAs.text = root.model.pestName;
        namedBy.text = "";
    }

    Words {
        objectName: "sampleTitle"
        text: root.model.number
        kind: "title"
        Layout.fillWidth: true
    }

    Words {
        text: root.model.trapTitle + " · " + root.model.summary
        kind: "small"
        Layout.fillWidth: true
    }

    // qmllint disable unqualified
    Each {
        model: root.model.trailLabels

        FactRow {
            required property string modelData
            required property int index
            label: modelData
            value: root.model.trailValues[index] ?? ""
            Layout.fillWidth: true
        }
    }
    // qmllint enable unqualified

    NoticeBar {
        objectName: "sampleTrouble"
        visible: text.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    FieldText {
        id: sentTo
        objectName: "sentTo"
        visible: root.state === "kept"
        label: qsTr("To whom")
        Layout.fillWidth: true
    }

    InkButton {
        objectName: "send"
        visible: root.state === "kept"
        text: qsTr("Sent today")
        enabled: !root.model.busy
        Layout.fillWidth: true
        onClicked: root.model.send(sentTo.text)
    }

    InkButton {
        objectName: "receive"
        visible: root.state === "sent"
        text: qsTr("Received today")
        enabled: !root.model.busy
        Layout.fillWidth: true
        onClicked: root.model.receive()
    }

    FieldText {
        id: namedAs
        objectName: "namedAs"
        visible: root.state === "received" || root.state === "sent"
        label: qsTr("Named as")
        Layout.fillWidth: true
    }

    FieldText {
        id: namedBy
        objectName: "namedBy"
        visible: root.state === "received" || root.state === "sent"
        label: qsTr("By whom")
        Layout.fillWidth: true
    }

    FieldNumber {
        objectName: "samplePest"
        visible: root.state === "received" || root.state === "sent"
        label: qsTr("Of %1, how many were the pest").arg(root.model.moths)
        value: root.pest
        to: root.model.moths
        emptyAllowed: false
        onEdited: pest => root.pest = pest
        Layout.fillWidth: true
    }

    InkButton {
        objectName: "nameIt"
        visible: root.state === "received" || root.state === "sent"
        text: qsTr("Named today: %1 the pest").arg(root.pest)
        enabled: !root.model.busy
        Layout.fillWidth: true
        onClicked: root.model.nameAs(namedAs.text, namedBy.text, root.pest)
    }

    Words {
        objectName: "corrects"
        visible: root.state === "named"
        text: qsTr("Those found to be the pest are added to the count of their visit. The count as it was made stays.")
        kind: "small"
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "stepBack"
        visible: root.state !== "kept" && root.state.length > 0
        text: qsTr("That was a mistake: one step back")
        enabled: !root.model.busy
        Layout.fillWidth: true
        onClicked: root.model.stepBack()
    }

    PlainButton {
        objectName: "history"
        text: qsTr("Correct it, or see its history")
        Layout.fillWidth: true
        onClicked: {
            root.settle();
            root.historyWanted();
        }
    }

    PlainButton {
        objectName: "visit"
        text: qsTr("History of its visit")
        Layout.fillWidth: true
        onClicked: {
            root.settle();
            root.visitWanted();
        }
    }

    PlainButton {
        objectName: "safe"
        text: qsTr("Close")
        Layout.fillWidth: true
        onClicked: root.close()
    }
}
