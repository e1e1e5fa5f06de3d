// SPDX-License-Identifier: MIT
// A sheet that rises over the page from below (in the middle of a wide window). The keyboard stays inside it;
// Escape, the back key and a touch outside mean dismissed().
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Duskrow.Theme

T.Popup {
    id: root

    required property string name
    default property alias content: column.data
    property bool decided: false
    readonly property real room: root.parent ? root.parent.height : 0
    readonly property bool wide: root.parent ? root.parent.width > 700 : false

    signal dismissed

    // Closes without dismissed(): one of the sheet's own answers was given.
    function settle(): void {
        root.decided = true;
        root.close();
    }

    parent: T.Overlay.overlay
    modal: true
    focus: true
    closePolicy: T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutside
    x: root.parent ? (root.parent.width - width) / 2 : 0
    y: root.wide ? (root.room - height) / 2 : root.room - height
    width: root.parent ? Math.min(root.parent.width, Theme.contentWidth) : 0
    height: Math.min(root.room - Theme.margin, column.implicitHeight + topPadding + bottomPadding)
    padding: Theme.margin

    onAboutToShow: root.decided = false
    onClosed: {
        if (!root.decided)
            root.dismissed();
    }

    T.Overlay.modal: Rectangle {
        color: Theme.shade
    }

    background: Rectangle {
        color: Theme.paper
        radius: Theme.radius + Theme.gapTiny
        border.width: Theme.hairline
        border.color: Theme.line

        Rectangle {
            visible: !root.wide
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            height: parent.radius
            color: Theme.paper
        }
    }

    FocusScope {
        id: inside

        readonly property Item focused: inside.Window.activeFocusItem

        // What the keyboard has reached is seen, where the sheet is taller than the screen.
        function reveal(item: Item): void {
            let above = item;
            while (above && above !== flick.contentItem)
                above = above.parent;
            if (!above)
                return;
            const top = item.mapToItem(flick.contentItem, 0, 0).y - Theme.gap;
            const bottom = top + item.height + 2 * Theme.gap;
            const y = Math.min(top, Math.max(flick.contentY, bottom - flick.height));
            flick.contentY = Math.max(0, Math.min(y, flick.contentHeight - flick.height));
        }

        anchors.fill: parent
        focus: true
        onFocusedChanged: inside.reveal(inside.focused)

        Accessible.role: Accessible.Dialog
        Accessible.name: root.name

        Flickable {
            id: flick
            anchors.fill: parent
            contentWidth: width
            contentHeight: column.implicitHeight
            boundsBehavior: Flickable.StopAtBounds
            interactive: contentHeight > height

            ColumnLayout {
                id: column
                width: flick.width
                spacing: Theme.gap
            }
        }
    }
}
