// SPDX-License-Identifier: MIT
// One change: who, when, and each field before and after.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts
import Duskrow.Theme

Card {
    id: root

    required property string title
    required property string besides
    required property string detail
    required property list<string> flags

    spacing: Theme.gapTiny

    Words {
        text: qsTr("%1 %2", "who, did what").arg(root.title).arg(root.detail)
        kind: "strong"
        Layout.fillWidth: true
    }

    Words {
        text: root.besides
        kind: "soft"
        Layout.fillWidth: true
        Layout.bottomMargin: root.flags.length > 0 ? Theme.gapTiny : 0
    }

    // qmllint disable unqualified
    Each {
        model: root.flags

        Words {
            required property string modelData
            text: modelData
            kind: "small"
            Layout.fillWidth: true
        }
    }
    // qmllint enable unqualified
}
