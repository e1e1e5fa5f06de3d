// SPDX-License-Identifier: MIT
// Districts by week, this year against the last ones at the same date, and the bands of all years.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ListFrame {
    id: root

    required property YearsViewModel years
    property string subject

    signal opened(string route, string subject)

    title: qsTr("Weeks and years")
    subtitle: root.years.kindLine
    canGoBack: true
    maximumWidth: root.width >= 900 ? Math.round(1.5 * Theme.contentWidth) : Theme.contentWidth
    model: root.years.rows
    Component.onCompleted: {
        root.list.spacing = Theme.gapSmall;
        root.list.reuseItems = false; // rows are of very different heights
        root.list.cacheBuffer = 400;
    }
    Keys.onEscapePressed: root.back()
    Keys.onPressed: event => {
        const key = event.text.toLowerCase();
        if (root.years.view === "weeks" && (key === "p" || key === "n"))
            root.years.goWeeks(key === "n" ? 1 : -1);
        else if (key === "c")
            root.years.copy();
        else
            return;
        event.accepted = true;
    }

    delegate: YearsRow {
        width: root.columnWidth
        height: implicitHeight
        onOpened: (route, subject) => root.opened(route, subject)
    }

    YearsHead {
        objectName: "yearsHead"
        years: root.years
        Layout.fillWidth: true
    }
}
