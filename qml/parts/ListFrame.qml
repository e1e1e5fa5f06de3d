// SPDX-License-Identifier: MIT
// A page that is one long list: only what is seen of it exists. Its head scrolls away with the rows.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

FocusScope {
    id: root

    required property string title
    required property var model
    required property Component delegate
    property string subtitle: ""
    property string sectionRole: ""
    property bool canGoBack: false
    property int maximumWidth: Theme.contentWidth
    property alias list: list
    property alias pinned: pinnedColumn.data
    default property alias head: headColumn.data
    readonly property int columnWidth: Math.min(root.width - 2 * Theme.margin, root.maximumWidth)

    signal back

    function scrollToTop(): void {
        list.positionViewAtBeginning();
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }

    // A list that was filled anew or sorted begins at its head.
    Connections {
        target: root.model
        function onModelReset() {
            Qt.callLater(root.scrollToTop); // qmllint disable
        }
    }

    ListView {
        id: list
        objectName: "list"
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: pinnedArea.top
        clip: true
        leftMargin: (root.width - root.columnWidth) / 2
        rightMargin: leftMargin
        onLeftMarginChanged: list.contentX = -list.leftMargin // it is only heeded before the first layout
        bottomMargin: Theme.gap
        spacing: Theme.gap
        boundsBehavior: Flickable.StopAtBounds
        cacheBuffer: 0
        reuseItems: true
        keyNavigationEnabled: true
        model: root.model
        delegate: root.delegate
        section.property: root.sectionRole
        // qmllint disable unqualified
        section.delegate: SectionLabel {
            required property string section
            width: root.columnWidth
            visible: text.length > 0
            height: visible ? implicitHeight + Theme.gap : 0
            text: section
        }

        header: Item {
            width: root.columnWidth
            height: headColumn.implicitHeight + Theme.margin + Theme.gap
        }
        // qmllint enable unqualified
    }

    ColumnLayout {
        id: headColumn
        parent: list.headerItem
        onImplicitHeightChanged: {
            if (list.contentY <= list.originY + 1)
                Qt.callLater(root.scrollToTop); // qmllint disable
        }
        y: Theme.margin
        width: root.columnWidth
        spacing: Theme.gap

        PageHead {
            objectName: "pageHead"
            title: root.title
            subtitle: root.subtitle
            canGoBack: root.canGoBack
            Layout.fillWidth: true
            onBack: root.back()
        }
    }

    Rectangle {
        id: pinnedArea
        z: 1 // the software renderer does not clip shapes of rows beneath
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: pinnedColumn.implicitHeight > 0 ? pinnedColumn.implicitHeight + Theme.gap + Theme.padding : 0
        color: Theme.paper

        Rectangle {
            anchors.left: parent.left
            anchors.right: parent.right
            height: Theme.hairline
            color: Theme.line
            visible: !list.atYEnd
        }

        ColumnLayout {
            id: pinnedColumn
            x: (root.width - width) / 2
            y: Theme.gap
            width: root.columnWidth
            spacing: Theme.gapSmall
        }
    }
}
