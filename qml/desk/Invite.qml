// SPDX-License-Identifier: MIT
// Inviting: who, as what and until when; then the code, its picture and the text to send on.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Paint
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property InviteViewModel model
    property string subject
    readonly property bool isDone: root.model.code.length > 0

    title: root.isDone ? qsTr("Invitation for %1").arg(root.model.name) : root.model.isKnown ? qsTr("Another device of %1").arg(root.model.name) : qsTr("Invite somebody")
    subtitle: root.isDone ? qsTr("The code is good once. It stands only here: hand it on before you leave this page.") : ""

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "name"
        visible: !root.isDone && !root.model.isKnown
        label: qsTr("Name")
        text: root.model.name
        maximumLength: 200
        Layout.fillWidth: true
        onEdited: text => root.model.name = text
    }

    ChoiceChips {
        objectName: "role"
        visible: !root.isDone && !root.model.isKnown
        label: qsTr("Takes part as")
        keys: root.model.mayInviteCoordinators ? ["grower", "agronomist", "coordinator"] : ["grower", "agronomist"]
        labels: [qsTr("grower"), qsTr("agronomist"), qsTr("coordinator")].slice(0, keys.length)
        chosen: root.model.role
        Layout.fillWidth: true
        onPicked: key => root.model.role = key
    }

    FieldDay {
        id: until
        objectName: "until"
        visible: !root.isDone
        label: qsTr("The code is good until")
        hint: qsTr("Once only. A code that was lost is replaced by a new one.")
        day: root.model.until
        today: root.model.today
        Layout.fillWidth: true
        onEdited: day => root.model.until = day
    }

    Card {
        visible: root.isDone
        Layout.fillWidth: true

        Words {
            objectName: "code"
            text: root.model.code
            kind: "number"
            horizontalAlignment: Text.AlignHCenter
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.typeLeast // some codes are made of wide letters
            wrapMode: Text.NoWrap
            Layout.fillWidth: true
            Accessible.name: root.model.codeSpelt
        }

        PictureItem {
            id: picture
            readonly property int room: Math.min(parent.width, 360)
            readonly property int side: root.model.pictureUnits > 0 ? Math.max(1, Math.floor(picture.room / root.model.pictureUnits)) * root.model.pictureUnits : 0
            objectName: "picture"
            picture: root.model.picture
            dark: false
            Layout.alignment: Qt.AlignHCenter
            Layout.preferredWidth: picture.side
            Layout.preferredHeight: picture.side
            Accessible.role: Accessible.Graphic
            Accessible.name: root.model.picture.title
            Accessible.description: root.model.picture.description
        }
    }

    NoticeBar {
        objectName: "reach"
        visible: root.isDone && text.length > 0
        kind: root.model.isKnownOutside ? "kept" : "caution"
        text: root.model.reach
        Layout.fillWidth: true
    }

    Words {
        objectName: "where"
        visible: root.isDone
        text: root.model.where
        Layout.fillWidth: true
    }

    PlainButton {
        objectName: "copy"
        visible: root.isDone
        text: root.model.isCopied ? qsTr("Copied") : qsTr("Copy as text")
        Layout.fillWidth: true
        onClicked: root.model.copy()
    }

    GridLayout {
        visible: root.isDone
        columns: Theme.textScale > 1.3 ? 1 : 2
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        Layout.fillWidth: true

        PlainButton {
            objectName: "mail"
            text: qsTr("E-mail")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onClicked: Qt.openUrlExternally(root.model.address("mailto"))
        }

        PlainButton {
            objectName: "message"
            text: qsTr("Message")
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            onClicked: Qt.openUrlExternally(root.model.address("sms"))
        }
    }

    pinned: [
        ActButton {
            objectName: "make"
            visible: !root.isDone
            enabled: until.valid && !root.model.busy
            text: qsTr("Make the code")
            Layout.fillWidth: true
            onClicked: root.model.invite()
        },
        ActButton {
            objectName: "done"
            visible: root.isDone
            text: qsTr("I have handed it on")
            Layout.fillWidth: true
            onClicked: root.back()
        }
    ]
}
