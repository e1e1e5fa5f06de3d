// SPDX-License-Identifier: MIT
// The life of one trap: what was done to it, and a page for each thing that may be done next.
import QtQuick
import Duskrow.App

FocusScope {
    id: root

    required property string subject
    required property LifeViewModel model
    // Opened for one act: when that is done, so is the page.
    readonly property bool forOneAct: root.subject.includes(":")

    signal back
    signal opened(string route, string subject)
    signal replaced(string route, string subject)

    function pageFor(act: string): Component {
        switch (act) {
        case "raise":
            return raise;
        case "lure":
            return lure;
        case "strip":
            return strip;
        case "move":
            return move;
        case "lend":
            return lend;
        case "end":
            return end;
        default:
            return overview;
        }
    }

    function leaveAct(): void {
        root.model.cancel();
        if (root.forOneAct)
            root.back();
    }

    Connections {
        target: root.model

        function onFinished() {
            if (root.forOneAct)
                root.back();
        }

        function onReplacementWanted(subject) {
            root.replaced("setup", subject);
        }
    }

    Loader {
        objectName: "lifePage"
        anchors.fill: parent
        focus: true
        sourceComponent: root.pageFor(root.model.form.act)
    }

    Component {
        id: overview
        LifeOverview {
            model: root.model
            onBack: root.back()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    Component {
        id: raise
        LifeRaise {
            model: root.model
            onBack: root.leaveAct()
        }
    }

    Component {
        id: lure
        LifeLure {
            model: root.model
            onBack: root.leaveAct()
        }
    }

    Component {
        id: strip
        LifeStrip {
            model: root.model
            onBack: root.leaveAct()
        }
    }

    Component {
        id: move
        LifeMove {
            model: root.model
            onBack: root.leaveAct()
        }
    }

    Component {
        id: lend
        LifeLend {
            model: root.model
            onBack: root.leaveAct()
        }
    }

    Component {
        id: end
        LifeEnd {
            model: root.model
            onBack: root.leaveAct()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }
}
