// SPDX-License-Identifier: MIT
// The lure: a small rubber stopper.
import QtQuick
import Duskrow.Theme

Item {
    width: 20
    height: 30

    Ink {
        fill: Theme.lure
        stroke: Theme.ink
        strokeWidth: 1.2
        path: "M 1 1 H 19 V 8 H 16.5 L 15.5 27 Q 10 31 4.5 27 L 3.5 8 H 1 Z"
    }

    Ink {
        stroke: Theme.ink
        strokeWidth: 1
        path: "M 3.5 8 H 16.5"
    }
}
