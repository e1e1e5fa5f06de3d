// SPDX-License-Identifier: MIT
// Why the verdict is what it is, what would change it, and what was decided.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property DecisionViewModel model

    signal framesWanted

    spacing: Theme.gap

    Words {
        objectName: "answerThreshold"
        visible: text.length > 0
        text: root.model.thresholdLine
        Layout.fillWidth: true
    }

    Words {
        objectName: "answerTiming"
        visible: root.model.timing.length > 0
        text: qsTr("Timing: %1.").arg(root.model.timing)
        Layout.fillWidth: true
    }

    SentenceList {
        objectName: "reasons"
        title: qsTr("Why")
        sentences: root.model.reasons
        Layout.fillWidth: true
    }

    SentenceList {
        objectName: "changes"
        title: qsTr("What would change it")
        sentences: root.model.changes
        Layout.fillWidth: true
    }

    SentenceList {
        objectName: "estimateLines"
        title: qsTr("The larvae")
        sentences: root.model.estimateLines
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "moreFrames"
        text: qsTr("Search more frames in this field")
        Layout.fillWidth: true
        onClicked: root.framesWanted()
    }

    ChoiceChips {
        objectName: "decided"
        label: qsTr("What you decided")
        keys: ["no_control", "look_again", "control"]
        labels: [qsTr("Leave it alone"), qsTr("Look again"), qsTr("Control")]
        chosen: root.model.form.decided
        Layout.fillWidth: true
        onPicked: key => root.model.form.decided = key === root.model.form.decided ? "" : key
    }

    FieldRemark {
        objectName: "remark"
        label: qsTr("Remark")
        text: root.model.form.remark
        Layout.fillWidth: true
        onEdited: text => root.model.form.remark = text
    }
}
