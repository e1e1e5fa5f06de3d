// SPDX-License-Identifier: MIT
// A dark button: the act itself, where the yellow one is what follows.
import QtQuick
import Duskrow.Theme

PressButton {
    fill: Theme.act
    fillPressed: Theme.actPressed
    words: Theme.actInk
    edgeWidth: 0
}
