// SPDX-License-Identifier: MIT
// The window: places along the bottom, pages over them; side by side where there is room.
import QtQuick
import QtQuick.Controls.Basic
import Duskrow.App
import Duskrow.Desk
import Duskrow.Parts
import Duskrow.Theme

ApplicationWindow {
    id: root

    required property App app
    property string place: "today"
    property bool isSwitching: false // to another programme
    readonly property bool wide: root.width >= 900
    // A desk takes the whole window.
    readonly property bool beside: root.wide && !(pages.currentItem as Desk) && !(pages.currentItem as Typing) && !(pages.currentItem as RegionMap)
    readonly property bool isOpen: root.app.state === App.Open
    readonly property list<string> placeKeys: routes.placeKeys
    readonly property list<string> pageKeys: allPages.keys

    // Opens a page over the place, e.g. open("season", trapId).
    function open(route: string, subject: string): void {
        pages.push(allPages.page(route), {
                       "subject": subject
                   });
    }

    // A page in the stead of the one on top.
    function replaceWith(route: string, subject: string): void {
        pages.replace(allPages.page(route), {
                          "subject": subject
                      });
    }

    function back(): void {
        if (pages.depth > 1)
            pages.pop();
        else
            pages.clear();
    }

    // What the back key of a phone does: a page first, then back to the day, and only then out of the app.
    function stepBack(): bool {
        if (pages.depth > 0)
            root.back();
        else if (root.isOpen && root.place !== "today")
            root.goTo("today");
        else
            return false;
        return true;
    }

    function goTo(key: string): void {
        pages.clear();
        root.place = key;
    }

    width: 390
    height: 844
    minimumWidth: 320
    minimumHeight: 480
    visible: true
    title: root.app.invented ? qsTr("Duskrow · an invented district") : qsTr("Duskrow")
    color: Theme.paper
    font.family: Theme.family

    // A file or an invitation that was opened from outside.
    Component.onCompleted: {
        if (root.isOpen && root.app.opened.length > 0)
            root.open(root.app.opened.startsWith("duskrow:") ? "join" : "carried", root.app.opened);
    }

    onClosing: close => {
        if (Qt.platform.os === "android")
            close.accepted = !root.stepBack();
    }

    // Everything open belongs to the programme before.
    Connections {
        target: root.app
        function onSwitched() {
            root.isSwitching = true;
            root.goTo("today");
        }
        function onStateChanged() {
            if (!root.isSwitching)
                return;
            root.isSwitching = false;
            if (root.app.state === App.Open)
                root.open("exchange", "");
        }
    }

    Binding {
        target: Theme
        property: "dark"
        value: root.app.settings.dark
    }

    Binding {
        target: Theme
        property: "textScale"
        value: root.app.settings.textScale
    }

    Routes {
        id: routes
        app: root.app
        onOpened: (route, subject) => root.open(route, subject)
        onPlaceWanted: key => root.goTo(key)
    }

    Pages {
        id: allPages
        app: root.app
        onOpened: (route, subject) => root.open(route, subject)
        onReplaced: (route, subject) => root.replaceWith(route, subject)
        onPlaceWanted: key => root.goTo(key)
        onLeft: root.back()
    }

    Loader {
        objectName: "outside"
        anchors.fill: parent
        active: !root.isOpen && !root.isSwitching
        sourceComponent: root.app.state !== App.Starting ? routes.closed : root.app.isJoined ? routes.waiting : routes.start
    }

    Item {
        id: home
        visible: root.isOpen && (root.beside || pages.depth === 0)
        width: root.wide ? Math.max(360, Math.min(460, root.width * 0.36)) : root.width
        anchors.top: parent.top
        anchors.bottom: parent.bottom

        Loader {
            objectName: "place"
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.top: parent.top
            anchors.bottom: tabs.top
            anchors.bottomMargin: Theme.gapTiny
            active: root.isOpen && !root.isSwitching
            sourceComponent: routes.place(root.place)
        }

        TabRow {
            id: tabs
            objectName: "tabs"
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            anchors.margins: Theme.gapSmall
            keys: routes.placeKeys
            labels: routes.placeLabels
            current: root.place
            marks: routes.placeKeys.map(key => key === "year" && root.app.questions > 0 ? String(root.app.questions) : "")
            onPicked: key => root.goTo(key)
        }
    }

    NothingOpen {
        visible: root.isOpen && root.wide
        isEmpty: pages.depth === 0
        x: home.width
        width: parent.width - home.width
        height: parent.height
    }

    StackView {
        id: pages
        objectName: "pages"
        visible: root.isOpen && pages.depth > 0
        anchors.fill: parent
        anchors.leftMargin: root.beside ? home.width + Theme.hairline : 0
        pushEnter: null
        pushExit: null
        popEnter: null
        popExit: null
        replaceEnter: null
        replaceExit: null
        onCurrentItemChanged: if (pages.currentItem)
            pages.currentItem.forceActiveFocus()
    }

    NoticeBar {
        objectName: "passingTrouble"
        visible: text.length > 0
        kind: "caution"
        text: root.app.passingTrouble
        action: qsTr("Read")
        onActed: root.app.dismissTrouble()
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.gapSmall
    }
}
