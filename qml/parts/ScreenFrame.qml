// SPDX-License-Identifier: MIT
// A page: head, scrolling content, and what comes next pinned below. On low screens the head scrolls away as
// well; in wide windows everything keeps to a readable column.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

FocusScope {
    id: root

    required property string title
    property string subtitle: ""
    property string above: ""
    property bool canGoBack: true
    property int maximumWidth: Theme.contentWidth
    // True where something in the content has Layout.fillHeight and shall take what the screen has to give.
    property bool fillsPage: false
    default property alias content: column.data
    property alias pinned: pinnedArea.content
    property alias headExtra: headColumn.data
    property alias spacing: column.spacing
    readonly property bool compact: root.height < 520 * Math.max(1, Theme.textScale * 0.8)
    readonly property int columnWidth: Math.min(root.width - 2 * Theme.margin, root.maximumWidth)
    readonly property Item focused: root.Window.activeFocusItem
    // Where the keyboard stood when the page came, before anybody moved it.
    property Item firstFocused: null
    property bool wasMoved: false

    // The software renderer paints a shape that was scrolled away as if there were no clip, and leaves it there. So
    // what lies around the scrolling area is painted anew over it: by a blue that differs by the least there is.
    readonly property bool stirs: GraphicsInfo.api === GraphicsInfo.Software
    property int stirred: 0
    readonly property color ground: Qt.rgba(Theme.paper.r, Theme.paper.g, Theme.paper.b - (root.stirred % 2) / 255, 1)

    signal back

    function scrollToTop(): void {
        flick.contentY = 0;
    }

    function stir(): void {
        if (root.stirs)
            ++root.stirred;
    }

    function holds(item: Item): bool {
        for (let above = item; above; above = above.parent) {
            if (above === flick.contentItem)
                return true;
        }
        return false;
    }

    // Scrolls until the item, its ring and a little air are seen; the top wins where it is too tall.
    function reveal(item: Item): void {
        if (!item || !root.holds(item))
            return;
        const top = item.mapToItem(flick.contentItem, 0, 0).y - Theme.margin;
        const bottom = top + item.height + 2 * Theme.margin;
        let y = flick.contentY;
        if (bottom > y + flick.height)
            y = bottom - flick.height;
        if (top < y)
            y = top;
        flick.contentY = Math.max(0, Math.min(y, flick.contentHeight - flick.height));
    }

    // While a page finds its measures, it stays at its top if the focus can be seen there.
    function settle(): void {
        if (root.focused !== root.firstFocused || root.wasMoved)
            return;
        flick.contentY = 0;
        root.reveal(root.focused);
    }

    onFocusedChanged: {
        if (!root.firstFocused && root.holds(root.focused))
            root.firstFocused = root.focused;
        root.reveal(root.focused);
    }
    Keys.onEscapePressed: event => {
        event.accepted = root.canGoBack;
        if (root.canGoBack)
            root.back();
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }

    // The head lives in one of two places, each before what it stands above: so it is read aloud first.
    Item {
        id: standing
        z: 1
        anchors.left: parent.left
        anchors.right: parent.right
        height: head.height
    }

    Item {
        id: head
        parent: root.compact ? scrolling : standing
        x: (root.width - width) / 2
        width: root.columnWidth
        height: headColumn.implicitHeight + headColumn.y + Theme.gap

        // Opaque, because the software renderer does not clip shapes to the scrolling area.
        Rectangle {
            x: -head.x
            width: root.width
            height: parent.height
            visible: !root.compact
            color: root.ground
        }

        ColumnLayout {
            id: headColumn
            y: Theme.margin
            width: parent.width
            spacing: Theme.gap

            PageHead {
                objectName: "pageHead"
                visible: root.title.length > 0 || root.canGoBack
                title: root.title
                subtitle: root.subtitle
                above: root.above
                canGoBack: root.canGoBack
                Layout.fillWidth: true
                onBack: root.back()
            }
        }
    }

    Flickable {
        id: flick
        objectName: "pageScroll"
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.topMargin: root.compact ? 0 : head.height
        anchors.bottom: pinnedArea.top
        clip: true
        contentWidth: width
        onHeightChanged: {
            root.reveal(root.focused);
            root.settle();
            root.stir();
        }
        onContentYChanged: root.stir()
        onContentHeightChanged: {
            root.settle();
            root.stir();
        }
        onMovementStarted: root.wasMoved = true
        contentHeight: column.y + column.height + Theme.gap
        boundsBehavior: Flickable.StopAtBounds

        Item {
            id: scrolling
            z: 1
            width: parent.width
            height: head.height
        }

        PageColumn {
            id: column
            x: (root.width - width) / 2
            y: (root.compact ? head.height : 0) + Theme.gapTiny
            width: root.columnWidth
            fills: root.fillsPage
            room: flick.height - y - Theme.gap
            spacing: Theme.gap
        }
    }

    PinnedArea {
        id: pinnedArea
        z: 1
        color: root.ground
        columnWidth: root.columnWidth
        isEdged: !flick.atYEnd
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
    }

    // What stands below this frame, as the row of places does.
    Rectangle {
        z: 1
        y: root.height
        width: root.width
        height: 2 * Theme.touchWide * Theme.textScale
        visible: root.stirs
        color: root.ground
    }
}
