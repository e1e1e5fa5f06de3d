// SPDX-License-Identifier: MIT
// One visit of the chosen trap; where its count is left out, why, and the way back in.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property DeskViewModel desk
    required property int index
    required property string key
    required property string title
    required property string besides
    required property string detail
    required property string route
    required property string subject
    required property list<string> flags
    required property bool struck

    signal opened(string route, string subject)

    objectName: "visit" + root.index
    spacing: Theme.gapTiny

    ListCard {
        objectName: "card"
        title: root.title
        subtitle: root.detail
        rightText: root.flags.concat([root.besides]).join(" · ")
        strikeout: root.struck
        Layout.fillWidth: true
        onClicked: root.opened(root.route, root.subject)
    }

    PlainButton {
        objectName: "letIn"
        visible: root.struck
        enabled: !root.desk.busy
        text: qsTr("Let it count again")
        Layout.fillWidth: true
        onClicked: root.desk.leaveOut(root.key, "")
    }
}
