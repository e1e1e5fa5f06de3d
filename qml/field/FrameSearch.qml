// SPDX-License-Identifier: MIT
// A walk through a field: how to look, once a season; then frame by frame.
import QtQuick
import Duskrow.App

FocusScope {
    id: root

    required property string subject
    required property FrameViewModel model

    signal back
    signal opened(string route, string subject)
    signal replaced(string route, string subject)

    Connections {
        target: root.model
        function onFinished(walk) {
            root.replaced("decide", walk);
        }
    }

    Loader {
        objectName: "step"
        anchors.fill: parent
        focus: true
        sourceComponent: root.model.needsHow ? how : frame
    }

    // qmllint disable unqualified
    Component {
        id: how
        WalkHow {
            model: root.model
            onBack: root.back()
        }
    }

    Component {
        id: frame
        FrameTally {
            model: root.model
            onBack: root.back()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }
    // qmllint enable unqualified
}
