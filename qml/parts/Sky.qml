// SPDX-License-Identifier: MIT
// The evening sky behind the stake.
import QtQuick
import Duskrow.Theme

Rectangle {
    gradient: Gradient {
        GradientStop {
            position: 0
            color: Theme.skyHigh
        }

        GradientStop {
            position: 0.6
            color: Theme.skyLow
        }

        GradientStop {
            position: 0.95
            color: Theme.skyHaze
        }
    }
}
