// SPDX-License-Identifier: MIT
// The scouting walks of the season: those going on, and what the others came to.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property LarvaeViewModel model

    signal opened(string route, string subject)

    title: qsTr("Larvae")
    canGoBack: false

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    EmptyState {
        objectName: "noWalks"
        visible: root.model.isKnown && root.model.open.count === 0 && root.model.done.count === 0
        title: qsTr("No field was scouted yet")
        text: root.model.canScout ? qsTr("About two weeks after the highest catch, search frames for larvae. Each field stands here with what was found.") : qsTr("The protocols in use say nothing of walks with frames. What counts in the crop stands on the page of each trap’s season.")
        Layout.fillWidth: true
        Layout.topMargin: Theme.gapWide
    }

    SectionLabel {
        visible: root.model.open.count > 0
        text: qsTr("Going on")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.open

        ListCard {
            required property int index
            required property string besides
            required property string detail
            required property string route
            required property string subject
            objectName: "openWalk" + index
            subtitle: detail
            rightText: besides
            due: true
            dueWord: ""
            Layout.fillWidth: true
            onClicked: root.opened(route, subject)
        }
    }

    SectionLabel {
        visible: root.model.done.count > 0
        text: qsTr("Scouted")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.done

        ListCard {
            required property int index
            required property string besides
            required property string detail
            required property string route
            required property string subject
            objectName: "doneWalk" + index
            subtitle: detail
            rightText: besides
            Layout.fillWidth: true
            onClicked: root.opened(route, subject)
        }
    }

    Words {
        objectName: "caution"
        text: root.model.caution
        kind: "soft"
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "walk"
            visible: root.model.hasSeason && root.model.canScout
            text: qsTr("Scout a field")
            Layout.fillWidth: true
            onClicked: root.opened("walk", "")
        }
    ]
}
