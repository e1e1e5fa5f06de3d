// SPDX-License-Identifier: MIT
// The weekly visit, one step at a time: which trap, count, trap, lure, done, kept.
import QtQuick
import Duskrow.App

FocusScope {
    id: root

    required property VisitViewModel model
    // A page of its own over the step: "", "heavy" or "guide".
    property string over: ""

    signal back
    signal opened(string route, string subject)
    signal replaced(string route, string subject)

    function goBack(): void {
        if (root.over.length > 0)
            root.over = "";
        else if (!root.model.previous())
            root.back();
    }

    function page(): Component {
        if (root.over === "heavy")
            return heavy;
        if (root.over === "guide")
            return guide;
        switch (root.model.step) {
        case "count":
            return count;
        case "trap":
            return trap;
        case "lure":
            return lure;
        case "done":
            return done;
        case "kept":
            return kept;
        default:
            return which;
        }
    }

    Loader {
        objectName: "step"
        anchors.fill: parent
        focus: true
        sourceComponent: root.page()
        onLoaded: item.forceActiveFocus()
    }

    Component {
        id: which
        WhichTrap {
            visit: root.model
            onBack: root.back()
            onPicked: trap => {
                if (trap === root.model.trapId)
                    root.model.tellTrap();
                else
                    root.replaced("visit", trap);
            }
        }
    }

    Component {
        id: count
        VisitCount {
            visit: root.model
            onBack: root.goBack()
            onHeavyWanted: root.over = "heavy"
            onGuideWanted: root.over = "guide"
        }
    }

    Component {
        id: heavy
        HeavyCatch {
            model: root.model.heavy
            many: root.model.guide.many
            title: root.model.title
            onBack: root.over = ""
        }
    }

    Component {
        id: guide
        MothGuidePage {
            guide: root.model.guide
            onBack: root.over = ""
        }
    }

    Component {
        id: trap
        VisitTrap {
            visit: root.model
            onBack: root.goBack()
        }
    }

    Component {
        id: lure
        VisitLure {
            visit: root.model
            onBack: root.goBack()
        }
    }

    Component {
        id: done
        VisitDone {
            visit: root.model
            onBack: root.goBack()
        }
    }

    Component {
        id: kept
        VisitKept {
            visit: root.model
            onBack: root.back()
            onReplaced: (route, subject) => root.replaced(route, subject)
        }
    }
}
