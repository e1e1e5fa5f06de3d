// SPDX-License-Identifier: MIT
// A stop of the day's list; touched, it says why it is due and what one does there.
import QtQuick
import Duskrow.Parts
import Duskrow.Theme

ListCard {
    id: root

    required property string trap
    required property string line
    required property string aside
    required property string spokenAside
    required property string reasons
    required property string actText
    required property string actRoute
    required property bool isDue
    property bool isOpen: false

    signal opened(string route, string subject)

    subtitle: root.line
    rightText: root.aside
    due: root.isDue
    dueWord: ""
    chevron: false
    Accessible.name: root.title + ", " + root.line + (root.spokenAside ? ", " + root.spokenAside : "")
    Accessible.description: root.isOpen ? root.reasons : qsTr("Touch to hear why.")
    onClicked: root.isOpen = !root.isOpen

    Words {
        objectName: "reasons"
        visible: root.isOpen
        width: parent.width
        topPadding: Theme.gapSmall
        text: root.reasons
        kind: "small"
    }

    Flow {
        visible: root.isOpen
        width: parent.width
        topPadding: Theme.gapSmall
        spacing: Theme.gapSmall

        InkButton {
            objectName: "stopAct"
            width: Math.min(implicitWidth, parent.width)
            text: root.actText
            onClicked: root.opened(root.actRoute, root.trap)
        }

        PlainButton {
            objectName: "stopSeason"
            visible: root.actRoute !== "season"
            width: Math.min(implicitWidth, parent.width)
            text: qsTr("Its season")
            onClicked: root.opened("season", root.trap)
        }
    }
}
