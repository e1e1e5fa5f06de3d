// SPDX-License-Identifier: MIT
// One device of a member: how far its entries are here, and how to end it when it is lost.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

Card {
    id: root

    required property int index
    required property string key
    required property string title
    required property string besides
    required property string detail
    required property list<string> flags
    required property bool struck
    property bool mayEnd: false
    property bool mayBeRoot: false

    signal ended(string key)
    signal madeRoot(string key)

    Words {
        text: root.besides.length > 0 ? qsTr("%1 (%2)", "name of a device, remark").arg(root.title).arg(root.besides) : root.title
        kind: "strong"
        font.strikeout: root.struck
        Layout.fillWidth: true
    }

    Words {
        text: root.detail
        kind: "soft"
        Layout.fillWidth: true
    }

    Words {
        objectName: "deviceFlags"
        visible: text.length > 0
        text: root.flags.join("\n")
        kind: "small"
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "makeRoot"
        visible: root.mayBeRoot
        text: qsTr("Make it a main device")
        Layout.fillWidth: true
        onClicked: root.madeRoot(root.key)
    }

    PlainButton {
        objectName: "end"
        visible: root.mayEnd
        text: qsTr("It is lost: end it")
        Layout.fillWidth: true
        onClicked: ask.open()
    }

    AskSheet {
        id: ask
        objectName: "askEnd"
        title: qsTr("End “%1”?").arg(root.title)
        text: qsTr("Everything of it that is here now stays. Whatever it sends from now on is kept aside, until you let it in piece by piece.")
        yesText: qsTr("End it")
        safeText: qsTr("Not now")
        onYes: root.ended(root.key)
    }
}
