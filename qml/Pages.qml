// SPDX-License-Identifier: MIT
// One row for each page. A page is handed the id of what it is about and its view model, and asks to go elsewhere by
// signals.
import QtQuick
import Duskrow.App
import Duskrow.Desk
import Duskrow.Field

QtObject {
    id: root

    required property App app
    readonly property list<string> keys: ["season", "life", "history", "correct", "setup", "visit", "samples", "round", "walk", "frames", "decide", "sheet", "programme", "calendar", "protocol", "settings"].concat(root.withOthers.keys).concat(root.ofDesk.keys)

    signal opened(string route, string subject)
    signal replaced(string route, string subject)
    signal placeWanted(string key)
    signal left

    readonly property Component season: Component {
        TrapSeason {
            id: seasonPage
            model: root.app.season(seasonPage.subject)
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component life: Component {
        TrapLife {
            id: lifePage
            model: root.app.life(lifePage.subject)
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
            onReplaced: (route, subject) => root.replaced(route, subject)
        }
    }

    readonly property Component history: Component {
        History {
            id: historyPage
            model: root.app.history(historyPage.subject)
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component correct: Component {
        Correction {
            id: correctPage
            model: root.app.correction(correctPage.subject)
            onBack: root.left()
        }
    }

    readonly property Component setup: Component {
        TrapSetup {
            id: setupPage
            property string subject
            model: root.app.setup(setupPage.subject)
            onBack: root.left()
            onReplaced: (route, subject) => root.replaced(route, subject)
            onPlaceWanted: key => root.placeWanted(key)
            onStartedOver: root.replaced("setup", setupPage.subject)
        }
    }

    readonly property Component visit: Component {
        TrapVisit {
            id: visitPage
            property string subject
            model: root.app.visit(visitPage.subject)
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
            onReplaced: (route, subject) => root.replaced(route, subject)
        }
    }

    readonly property Component samples: Component {
        Samples {
            id: samplesPage
            property string subject
            model: root.app.samples(samplesPage.subject)
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component round: Component {
        Round {
            model: root.app.round()
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component walk: Component {
        WalkStart {
            id: walkPage
            model: root.app.walkStart(walkPage.subject)
            onBack: root.left()
            onReplaced: (route, subject) => root.replaced(route, subject)
        }
    }

    readonly property Component frames: Component {
        FrameSearch {
            id: framesPage
            model: root.app.frames(framesPage.subject)
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
            onReplaced: (route, subject) => root.replaced(route, subject)
        }
    }

    readonly property Component decide: Component {
        Decide {
            id: decidePage
            model: root.app.decision(decidePage.subject)
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component sheet: Component {
        WalkSheet {
            id: sheetPage
            model: root.app.sheet(sheetPage.subject)
            onBack: root.left()
        }
    }

    readonly property Component programme: Component {
        Programme {
            model: root.app.programme()
            onBack: root.left()
        }
    }

    readonly property Component calendar: Component {
        CalendarFile {
            model: root.app.calendar()
            onBack: root.left()
        }
    }

    readonly property Component protocol: Component {
        ProtocolSheet {
            id: protocolPage
            model: root.app.protocol(protocolPage.subject)
            onBack: root.left()
        }
    }

    readonly property Component settings: Component {
        Settings {
            settings: root.app.settings
            storePath: root.app.storePath
            onBack: root.left()
        }
    }

    readonly property ExchangePages withOthers: ExchangePages {
        app: root.app
        onOpened: (route, subject) => root.opened(route, subject)
        onLeft: root.left()
    }

    readonly property DeskPages ofDesk: DeskPages {
        app: root.app
        onOpened: (route, subject) => root.opened(route, subject)
        onLeft: root.left()
    }

    // Each page stands above under its route.
    function page(route: string): Component {
        if (root.withOthers.keys.includes(route))
            return root.withOthers.page(route);
        if (root.ofDesk.keys.includes(route))
            return root.ofDesk[route];
        if (root.keys.includes(route))
            return root[route];
        console.error("no page", route);
        return null;
    }
}
