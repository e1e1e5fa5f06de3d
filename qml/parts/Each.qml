// SPDX-License-Identifier: MIT
// One item for each row of a model; the only repeater the screens use.
//
// A layout of Qt 6.4 that is given another size before it has noticed that one of its items went arranges what is
// destroyed already, and the program dies. So an item leaves the arrangement at once, and the layout is made to notice
// while the item is still there.
import QtQuick

Repeater {
    id: root

    onItemRemoved: (index, item) => {
        item.parent = root; // not null, which bindings to it do not expect
        if (root.parent)
            root.parent.ensurePolished(); // qmllint disable
    }
}
