// SPDX-License-Identifier: MIT
// The pages that have to do with the others of the programme.
import QtQuick
import Duskrow.App
import Duskrow.Desk

QtObject {
    id: root

    required property App app
    readonly property list<string> keys: ["exchange", "carried", "members", "member", "invite", "differences", "join", "desk", "typing", "publish", "news", "import"]

    signal opened(string route, string subject)
    signal left

    readonly property Component exchange: Component {
        Exchange {
            model: root.app.exchange()
            joinedLine: root.app.joinedLine
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component publish: Component {
        Publish {
            model: root.app.publish()
            onBack: root.left()
        }
    }

    readonly property Component news: Component {
        News {
            id: newsPage
            model: root.app.news(newsPage.subject)
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component carried: Component {
        Carried {
            id: carriedPage
            model: root.app.carried(carriedPage.subject)
            onBack: root.left()
        }
    }

    readonly property Component members: Component {
        Members {
            model: root.app.members()
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component member: Component {
        MemberPage {
            id: memberPage
            model: root.app.member(memberPage.subject)
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component invite: Component {
        Invite {
            id: invitePage
            model: root.app.invite(invitePage.subject)
            onBack: root.left()
        }
    }

    readonly property Component differences: Component {
        Differences {
            model: root.app.differences()
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component desk: Component {
        Desk {
            model: root.app.desk()
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component typing: Component {
        Typing {
            id: typingPage
            typing: root.app.typing(typingPage.subject)
            onBack: root.left()
        }
    }

    readonly property Component importing: Component {
        Import {
            id: importPage
            model: root.app.importing()
            onBack: root.left()
        }
    }

    // "import" is no name that a property may have.
    function page(route: string): Component {
        return route === "import" ? root.importing : root[route];
    }

    readonly property Component join: Component {
        Join {
            id: joinPage
            model: root.app.join(joinPage.subject)
            onBack: root.left()
        }
    }
}
