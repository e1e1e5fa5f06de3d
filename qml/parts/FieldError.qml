// SPDX-License-Identifier: MIT
// The sentence below a field that cannot take what was typed; it takes no room when there is nothing to say.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

RowLayout {
    id: root

    required property string text

    visible: root.text.length > 0
    spacing: Theme.gapSmall

    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.text

    SignMark {
        kind: "caution"
        colour: Theme.inkError
        ground: Theme.paper
        scale: 0.8
        Layout.alignment: Qt.AlignTop
    }

    Words {
        objectName: "error"
        text: root.text
        kind: "error"
        Layout.fillWidth: true
        Accessible.ignored: true
    }
}
