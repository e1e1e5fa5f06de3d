// SPDX-License-Identifier: MIT
// Bagged moths on their way: kept, sent, received, named.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property SamplesViewModel model

    signal opened(string route, string subject)

    title: qsTr("Samples")
    subtitle: root.model.open > 0 ? qsTr("%n to be named", "", root.model.open) : qsTr("Those nobody was sure of in the field")

    EmptyState {
        objectName: "noSamples"
        visible: root.model.isKnown && root.model.count === 0
        title: qsTr("No samples")
        text: qsTr("What is counted as “not sure” becomes a numbered sample when the visit is kept.")
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "trouble"
        visible: text.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    ListView {
        id: list
        objectName: "sampleList"
        model: root.model.list
        spacing: Theme.gapSmall
        interactive: false
        Layout.fillWidth: true
        Layout.preferredHeight: contentHeight

        // qmllint disable unqualified
        delegate: ListCard {
            required property string sampleId
            required property string number
            required property string trapTitle
            required property string stateWords
            required property string summary
            required property bool isNamed
            required property int index
            objectName: "sample_" + index
            width: ListView.view.width
            title: number
            subtitle: trapTitle + "\n" + summary
            due: !isNamed
            dueWord: stateWords
            rightText: isNamed ? stateWords : ""
            onClicked: {
                root.model.chosen = sampleId;
                sheet.open();
            }
        }
        // qmllint enable unqualified
    }

    SampleSheet {
        id: sheet
        objectName: "sampleSheet"
        model: root.model
        onHistoryWanted: root.opened("history", "sample/" + root.model.chosen)
        onVisitWanted: root.opened("history", "visit/" + root.model.visitId)
    }
}
