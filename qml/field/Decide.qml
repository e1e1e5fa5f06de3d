// SPDX-License-Identifier: MIT
// One field held against the threshold: the answer, the money, the timing, and the working behind them.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts

ScreenFrame {
    id: root

    required property string subject
    required property DecisionViewModel model
    property string shown: root.model.verdict.length > 0 ? "answer" : "money"

    signal opened(string route, string subject)

    title: root.model.title
    subtitle: qsTr("Larvae held against your threshold")
    Component.onCompleted: root.shown = root.model.verdict.length > 0 ? "answer" : "money"

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    VerdictPanel {
        objectName: "verdict"
        verdict: root.model.verdictKey
        title: root.model.verdict
        mean: root.model.mean
        range: root.model.rangeLine
        next: root.model.nextStep
        Layout.fillWidth: true
    }

    ChoiceChips {
        objectName: "shown"
        label: qsTr("Show")
        labelShown: false
        keys: ["answer", "money", "timing", "working"]
        labels: [qsTr("Why"), qsTr("Money"), qsTr("Timing"), qsTr("Working")]
        chosen: root.shown
        Layout.fillWidth: true
        onPicked: key => {
            root.shown = key;
            root.scrollToTop(); // the verdict stays in sight
        }
    }

    NoticeBar {
        objectName: "dryNote"
        visible: text.length > 0 && (root.shown === "answer" || root.shown === "money")
        kind: "question"
        text: root.model.dryNote
        action: qsTr("Lower it for a dry season")
        Layout.fillWidth: true
        onActed: {
            root.shown = "money";
            root.model.form.dry = true;
        }
    }

    DecideWhy {
        visible: root.shown === "answer"
        model: root.model
        Layout.fillWidth: true
        onFramesWanted: root.opened("frames", root.model.walk)
    }

    DecideMoney {
        visible: root.shown === "money"
        model: root.model
        Layout.fillWidth: true
    }

    DecideTiming {
        id: timing
        visible: root.shown === "timing"
        model: root.model
        Layout.fillWidth: true
    }

    DecideWorking {
        visible: root.shown === "working"
        model: root.model
        Layout.fillWidth: true
    }

    SectionLabel {
        text: qsTr("Cautions")
        Layout.fillWidth: true
    }

    // qmllint disable unqualified
    Each {
        model: root.model.cautions

        Words {
            required property string modelData
            required property int index
            objectName: "caution" + index
            text: modelData
            kind: "small"
            Layout.fillWidth: true
        }
    }
    // qmllint enable unqualified

    pinned: [
        ActButton {
            objectName: "keep"
            visible: root.model.isFound && !root.model.isKept
            text: qsTr("Keep this")
            enabled: timing.valid && !root.model.busy
            Layout.fillWidth: true
            onClicked: root.model.keep()
        },
        PlainButton {
            objectName: "sheet"
            visible: root.model.isKept
            text: qsTr("The sheet")
            Layout.fillWidth: true
            onClicked: root.opened("sheet", root.model.walk)
        }
    ]
}
