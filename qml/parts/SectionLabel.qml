// SPDX-License-Identifier: MIT
// The quiet line above a group of things.
import QtQuick
import Duskrow.Theme

Words {
    id: root

    kind: "soft"
    topPadding: Theme.gapSmall
    font.weight: Font.Medium

    Accessible.role: Accessible.Heading
    Accessible.name: root.text
}
