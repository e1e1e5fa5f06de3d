// SPDX-License-Identifier: MIT
// One page of a set-up: parts below each other. It is `valid` while nothing on it is half typed.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Theme

ColumnLayout {
    id: root

    required property SetupViewModel model
    property bool valid: true

    spacing: Theme.gap
}
