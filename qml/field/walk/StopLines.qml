// SPDX-License-Identifier: MIT
// The larvae of a walk so far between the lines at which it may stop.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Paint
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property FrameViewModel model

    spacing: Theme.gapTiny

    PictureItem {
        objectName: "lines"
        picture: root.model.lines(width, height, Theme.textScale, root.model.revision)
        dark: Theme.dark
        fontFamily: Theme.family
        Layout.fillWidth: true
        Layout.preferredHeight: Math.round(Math.min(width, 420) * 0.66)

        Accessible.role: Accessible.Graphic
        Accessible.name: picture.description
    }

    Words {
        text: qsTr("All larvae so far, frame after frame.")
        kind: "soft"
        Layout.fillWidth: true
    }
}
