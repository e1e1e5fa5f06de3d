// SPDX-License-Identifier: MIT
// A page that can be shown by day and by night, in small and large type.
import QtQuick
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property bool dark
    required property real textScale

    Component.onCompleted: {
        Theme.dark = root.dark;
        Theme.textScale = root.textScale;
    }
}
