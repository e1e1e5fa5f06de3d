// SPDX-License-Identifier: MIT
// Setting up a trap, one thing on the screen at a time. Going back keeps what was entered; so does leaving.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme
import "setup"

FocusScope {
    id: root

    required property SetupViewModel model
    readonly property bool isKept: root.model.page === "kept"
    readonly property SetupPage step: loader.item as SetupPage

    signal back
    signal replaced(string route, string subject)
    signal placeWanted(string key)
    signal startedOver

    function pageOf(page: string): Component {
        switch (page) {
        case "yes":
            return yesPage;
        case "place":
            return placePage;
        case "around":
            return aroundPage;
        case "trap":
            return trapPage;
        case "handling":
            return handlingPage;
        case "lure":
            return lurePage;
        case "strip":
            return stripPage;
        case "stake":
            return stakePage;
        case "last":
            return lastPage;
        case "kept":
            return keptPage;
        default:
            return fieldPage;
        }
    }

    function goBack(): void {
        if (root.model.atStart)
            root.back();
        else
            root.model.goBack();
    }

    function goOn(): void {
        if (root.isKept)
            root.replaced("season", root.model.keptTrap);
        else if (root.step.valid)
            root.model.goOn();
    }

    Component { id: fieldPage; FieldPage { model: root.model } }
    Component { id: yesPage; YesPage { model: root.model } }
    Component { id: placePage; PlacePage { model: root.model } }
    Component { id: aroundPage; AroundPage { model: root.model } }
    Component { id: trapPage; TrapPage { model: root.model } }
    Component { id: handlingPage; HandlingPage { model: root.model } }
    Component { id: lurePage; LurePage { model: root.model } }
    Component { id: stripPage; StripPage { model: root.model } }
    Component { id: stakePage; StakePage { model: root.model } }
    Component { id: lastPage; LastPage { model: root.model } }
    Component {
        id: keptPage

        KeptPage {
            model: root.model
            onAnotherWanted: root.replaced("setup", "site/" + root.model.keptSite)
        }
    }

    Connections {
        target: root.model

        function onPageChanged(): void {
            frame.scrollToTop();
        }

        function onAsked(title: string, text: string): void {
            ask.title = title;
            ask.text = text;
            ask.open();
        }

        function onStartedOver(): void {
            root.startedOver();
        }
    }

    ScreenFrame {
        id: frame
        objectName: "setupFrame"
        anchors.fill: parent
        focus: true
        title: root.model.title
        subtitle: trail.question(root.model.page)
        onBack: root.goBack()

        headExtra: SetupTrail {
            id: trail
            objectName: "trail"
            visible: !root.isKept
            page: root.model.page
            Layout.fillWidth: true
        }

        NoticeBar {
            objectName: "blocked"
            visible: root.model.blocked.length > 0
            kind: "caution"
            text: root.model.blocked
            Layout.fillWidth: true
        }

        Loader {
            id: loader
            objectName: "step"
            sourceComponent: root.pageOf(root.model.page)
            visible: root.model.blocked.length === 0
            Layout.fillWidth: true
        }

        pinned: [
            NoticeBar {
                objectName: "trouble"
                visible: root.model.trouble.length > 0
                kind: "caution"
                text: root.model.trouble
                Layout.fillWidth: true
            },
            PlainButton {
                objectName: "toToday"
                visible: root.isKept
                text: qsTr("Back to today")
                Layout.fillWidth: true
                onClicked: root.placeWanted("today")
            },
            ActButton {
                objectName: "next"
                text: root.model.nextText
                enabled: !root.model.busy && root.model.blocked.length === 0
                Layout.fillWidth: true
                onClicked: root.goOn()
            }
        ]
    }

    AskSheet {
        id: ask
        objectName: "ask"
        title: ""
        yesText: qsTr("Yes, keep it so")
        safeText: qsTr("Look at it again")
        onYes: root.model.keepAnyway()
    }
}
