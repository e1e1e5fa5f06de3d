// SPDX-License-Identifier: MIT
// What is due, nearest first.
import QtQuick
import Duskrow.Parts

ScreenFrame {
    title: qsTr("Today")
    canGoBack: false
}
