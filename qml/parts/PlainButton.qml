// SPDX-License-Identifier: MIT
// A white button with a thin edge: everything that is neither the act nor the next.
import QtQuick

PressButton {
}
