// SPDX-License-Identifier: MIT
// One number with the word that says what it is; stands beside others of its kind.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

Card {
    id: root

    required property int count
    required property string word
    property bool strong: false // the one to look at

    padding: Theme.gap
    spacing: 0
    border.width: root.strong ? 2 : Theme.hairline
    border.color: root.strong ? Theme.edge : Theme.line

    Accessible.role: Accessible.StaticText
    Accessible.name: root.count + " " + root.word

    Words {
        text: Number(root.count).toLocaleString(Qt.locale(), "f", 0)
        kind: "number"
        fontSizeMode: Text.HorizontalFit
        minimumPixelSize: Theme.typeHead
        wrapMode: Text.NoWrap
        Layout.fillWidth: true
        Accessible.ignored: true
    }

    Words {
        text: root.word
        kind: "soft"
        Layout.fillWidth: true
        Accessible.ignored: true
    }
}
