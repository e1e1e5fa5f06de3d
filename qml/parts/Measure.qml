// SPDX-License-Identifier: MIT
// How wide words would be, asked before they are laid out. It measures at one size and scales; reading the size
// back makes an answer given before the font stood be given again.
import QtQuick
import Duskrow.Theme

FontMetrics {
    id: root

    readonly property int reference: 100

    function width(words: string, size: real): real {
        return Math.ceil(root.advanceWidth(words) * size / root.font.pixelSize);
    }

    function widest(words: list<string>, size: real): real {
        let most = 0;
        for (let i = 0; i < words.length; ++i)
            most = Math.max(most, root.width(words[i], size));
        return most;
    }

    font.family: Theme.family
    font.pixelSize: root.reference
    font.weight: Font.Bold
}
