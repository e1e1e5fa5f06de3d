// SPDX-License-Identifier: MIT
// What a coordinator decides: differences, proposals, words out of date, and what was kept aside.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property DifferencesViewModel model
    property string subject

    signal opened(string route, string subject)

    title: qsTr("Differences")
    subtitle: root.model.isCoordinator ? qsTr("Both values stay in the history, whichever you choose.") : qsTr("A coordinator settles these. Until then the highest value is drawn, and marked.")

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    EmptyState {
        objectName: "nothing"
        visible: root.model.isRead && root.model.isEmpty
        title: qsTr("Nothing to decide")
        text: qsTr("Where two people say different things of the same, both stand here until you choose.")
        Layout.fillWidth: true
    }

    Each {
        model: root.model.differences

        DifferenceCard {
            objectName: "difference" + index
            list: root.model.differences
            mayDecide: root.model.isCoordinator
            Layout.fillWidth: true
        }
    }

    AsideList {
        objectName: "proposals"
        rows: root.model.proposals
        heading: qsTr("Proposals to records that stand")
        act: root.model.isCoordinator ? qsTr("Take it") : ""
        otherAct: root.model.isCoordinator ? qsTr("Leave it") : ""
        enabled: !root.model.busy
        Layout.fillWidth: true
        onActed: (key, subject) => root.model.take(key)
        onDeclined: (key, subject) => root.model.leave(subject)
    }

    AsideList {
        objectName: "stale"
        rows: root.model.stale
        heading: qsTr("Changed since you said that it stands")
        act: root.model.isCoordinator ? qsTr("It stands as it is now") : ""
        enabled: !root.model.busy
        Layout.fillWidth: true
        onActed: (key, subject) => root.model.standAnew(key)
    }

    AsideList {
        objectName: "aside"
        rows: root.model.aside
        heading: qsTr("Kept aside: stored and passed on, but not counted")
        act: root.model.isCoordinator ? qsTr("Let it in") : ""
        enabled: !root.model.busy
        Layout.fillWidth: true
        onActed: (key, subject) => root.model.letIn(key)
    }

    AsideList {
        objectName: "refused"
        rows: root.model.refused
        heading: qsTr("Files that were refused")
        Layout.fillWidth: true
    }

    pinned: [
        ActButton {
            objectName: "settle"
            visible: root.model.isCoordinator && root.model.differences.count > 0
            enabled: root.model.differences.chosen > 0 && !root.model.busy
            text: root.model.differences.chosen === 0 ? qsTr("Choose a value above") : root.model.differences.chosen === 1 ? qsTr("Settle it") : qsTr("Settle %1").arg(root.model.differences.chosen)
            Layout.fillWidth: true
            onClicked: root.model.settle()
        }
    ]
}
