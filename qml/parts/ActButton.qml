// SPDX-License-Identifier: MIT
// The one yellow button of a page: what comes next.
import QtQuick
import Duskrow.Theme

PressButton {
    leastHeight: Theme.touchWide + Theme.gapSmall
    fill: Theme.next
    fillPressed: Theme.nextPressed
    words: Theme.nextInk
    edgeWidth: 0
}
