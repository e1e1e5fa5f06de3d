// SPDX-License-Identifier: MIT
// The one yellow button of a page: what comes next.
import QtQuick
import Duskrow.Theme

PressButton {
    implicitHeight: Math.max(Theme.touchWide + Theme.gapSmall, implicitContentHeight + topPadding + bottomPadding)
    fill: Theme.next
    fillPressed: Theme.nextPressed
    words: Theme.nextInk
    edgeWidth: 0
}
