// SPDX-License-Identifier: MIT
// When the traps are in: what the next season needs, thanks to those who kept traps, and who goes on.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ListFrame {
    id: root

    required property WinterViewModel winter
    property string subject

    title: qsTr("Winter")
    subtitle: root.winter.season
    canGoBack: true
    maximumWidth: root.width >= 900 ? Math.round(1.5 * Theme.contentWidth) : Theme.contentWidth
    model: root.winter.cooperators
    Component.onCompleted: {
        root.list.spacing = Theme.gapSmall;
        root.list.reuseItems = false; // rows are of very different heights
        root.list.cacheBuffer = 400;
    }
    Keys.onEscapePressed: root.back()

    delegate: CooperatorRow {
        width: root.columnWidth
        height: implicitHeight
        winter: root.winter
    }

    WinterHead {
        objectName: "winterHead"
        winter: root.winter
        Layout.fillWidth: true
    }
}
