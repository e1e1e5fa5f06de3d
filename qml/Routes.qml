// SPDX-License-Identifier: MIT
// One row for each place, and what stands there before there is a programme.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Desk
import Duskrow.Field
import Duskrow.Parts

QtObject {
    id: root

    required property App app
    readonly property list<string> placeKeys: ["today", "traps", "larvae", "year"]
    readonly property list<string> placeLabels: [qsTr("Today"), qsTr("Traps"), qsTr("Larvae"), qsTr("Year")]

    signal opened(string route, string subject)
    signal placeWanted(string key)

    readonly property Component closed: Component {
        ScreenFrame {
            title: qsTr("The store could not be opened")
            canGoBack: false
            NoticeBar {
                objectName: "closedWhy"
                kind: "caution"
                text: root.app.trouble
                Layout.fillWidth: true
            }
            pinned: [
                PlainButton {
                    objectName: "setAside"
                    visible: root.app.canSetAside
                    text: qsTr("Keep it aside and begin a new one")
                    Layout.fillWidth: true
                    onClicked: root.app.setAsideAndOpen()
                },
                ActButton {
                    objectName: "tryAgain"
                    text: qsTr("Try again")
                    Layout.fillWidth: true
                    onClicked: root.app.open()
                }
            ]
        }
    }

    readonly property Component start: Component {
        StartOrJoin {
            app: root.app
        }
    }

    // Joined, and the programme's own records are still to come.
    readonly property Component waiting: Component {
        Exchange {
            model: root.app.exchange()
            joinedLine: root.app.joinedLine
            isWaiting: true
            canGoBack: false
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component today: Component {
        Today {
            model: root.app.today()
            questions: root.app.asked()
            onOpened: (route, subject) => root.opened(route, subject)
            onPlaceWanted: key => root.placeWanted(key)
        }
    }

    readonly property Component traps: Component {
        Traps {
            traps: root.app.traps()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component larvae: Component {
        Larvae {
            model: root.app.larvae()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component year: Component {
        Year {
            model: root.app.year()
            questions: root.app.questions
            isJoined: root.app.isJoined
            isCoordinator: root.app.isCoordinator
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    function place(key: string): Component {
        switch (key) {
        case "traps":
            return root.traps;
        case "larvae":
            return root.larvae;
        case "year":
            return root.year;
        default:
            return root.today;
        }
    }
}
