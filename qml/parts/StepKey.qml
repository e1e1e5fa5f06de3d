// SPDX-License-Identifier: MIT
// A key that adds or takes a fixed amount and shows it with its sign.
import QtQuick
import Duskrow.Theme

PressButton {
    id: root

    required property real by
    property int decimals: 0
    readonly property string amount: Number(Math.abs(root.by)).toLocaleString(Qt.locale(), "f", root.decimals)

    signal stepped(real by)

    implicitWidth: Math.max(Theme.touchWide, implicitContentWidth + 2 * Theme.gap)
    horizontalPadding: Theme.gapSmall
    text: (root.by < 0 ? "−" : "+") + root.amount
    font.pixelSize: Theme.typeTitle
    autoRepeat: true
    // Longer than usual: a gloved press is slow, and must count once.
    autoRepeatDelay: 700
    onClicked: root.stepped(root.by)
}
