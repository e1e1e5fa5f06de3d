// SPDX-License-Identifier: MIT
// One item for each row of a model; the only repeater the screens use.
//
// A layout of Qt 6.4 notices that one of its items went only when it is next polished; is it given another size before
// that, it arranges what is destroyed already, and the program dies. So it is made to notice before the item is destroyed.
import QtQuick

Repeater {
    id: root

    function notice(): void {
        if (root.parent)
            root.parent.ensurePolished(); // qmllint disable
    }

    onItemRemoved: Qt.callLater(root.notice)
}
