// SPDX-License-Identifier: MIT
// The pages of a coordinator's desk that look at a whole region.
import QtQuick
import Duskrow.App
import Duskrow.Desk

QtObject {
    id: root

    required property App app
    readonly property list<string> keys: ["map", "years", "winter", "temperatures"]

    signal opened(string route, string subject)
    signal left

    readonly property Component map: Component {
        RegionMap {
            model: root.app.map()
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component years: Component {
        Years {
            years: root.app.years()
            onBack: root.left()
            onOpened: (route, subject) => root.opened(route, subject)
        }
    }

    readonly property Component winter: Component {
        Winter {
            winter: root.app.winter()
            onBack: root.left()
        }
    }

    readonly property Component temperatures: Component {
        Temperatures {
            model: root.app.temperatures()
            onBack: root.left()
        }
    }
}
