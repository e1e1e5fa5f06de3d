// SPDX-License-Identifier: MIT
// The first start: a programme of one's own, or one that others made.
import QtQuick
import Duskrow.App
import Duskrow.Desk

Item {
    id: root

    required property App app
    property bool isJoining: root.app.opened.length > 0

    Loader {
        anchors.fill: parent
        sourceComponent: root.isJoining ? join : start
    }

    Component {
        id: start
        Start {
            model: root.app.start()
            onJoinWanted: root.isJoining = true
        }
    }

    Component {
        id: join
        Join {
            model: root.app.join(root.app.opened)
            onBack: root.isJoining = false
        }
    }
}
