// SPDX-License-Identifier: MIT
// The region on a map: beside it, or below it on a narrow window, the week, the key, and the trap that was touched.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

FocusScope {
    id: root

    required property MapViewModel model
    property string subject
    readonly property bool wide: root.width >= 900 * Math.max(1, Theme.textScale * 0.75)
    readonly property int panelWidth: Math.round(Math.min(root.width * 0.42, 380 * Math.max(1, Theme.textScale * 0.85)))

    signal back
    signal opened(string route, string subject)

    function act(event: var): bool {
        switch (event.key) {
        case Qt.Key_Left:
            view.map.pan(80, 0);
            return true;
        case Qt.Key_Right:
            view.map.pan(-80, 0);
            return true;
        case Qt.Key_Up:
            view.map.pan(0, 80);
            return true;
        case Qt.Key_Down:
            view.map.pan(0, -80);
            return true;
        case Qt.Key_Return:
        case Qt.Key_Enter:
            if (root.model.trap.length > 0)
                root.opened("season", root.model.trap);
            return true;
        }
        switch (event.text.toLowerCase()) {
        case "+":
        case "=":
            view.nearer(1.5);
            return true;
        case "-":
            view.nearer(1 / 1.5);
            return true;
        case "0":
            view.map.fit();
            return true;
        case "n":
        case "p":
            root.model.chooseNext(event.text.toLowerCase() === "n" ? 1 : -1);
            view.map.showChosen();
            return true;
        case "[":
        case "]":
            root.model.week += event.text === "]" ? 1 : -1;
            return true;
        }
        return false;
    }

    focus: true
    Keys.onPressed: event => {
        if (!(event.modifiers & (Qt.ControlModifier | Qt.AltModifier | Qt.MetaModifier)))
            event.accepted = root.act(event);
    }
    Keys.onEscapePressed: {
        if (root.model.trap.length > 0)
            root.model.chooseNone();
        else
            root.back();
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.paper
    }

    MapView {
        id: view
        objectName: "mapView"
        model: root.model
        focus: true
        y: root.wide ? 0 : head.y + head.height + Theme.gap
        width: root.wide ? root.width - root.panelWidth : root.width
        height: root.wide ? root.height : Math.max(220, Math.round((root.height - y) * 0.5))
    }

    PageHead {
        id: head
        objectName: "pageHead"
        x: (root.wide ? root.width - root.panelWidth : 0) + Theme.margin
        y: Theme.margin
        width: (root.wide ? root.panelWidth : root.width) - 2 * Theme.margin
        title: qsTr("Map")
        onBack: root.back()
    }

    Flickable {
        id: scroll
        objectName: "pageScroll"
        x: root.wide ? root.width - root.panelWidth : 0
        y: root.wide ? head.y + head.height + Theme.gap : view.y + view.height
        width: root.wide ? root.panelWidth : root.width
        height: root.height - y
        clip: true
        contentWidth: width
        contentHeight: panel.height + 2 * Theme.margin
        boundsBehavior: Flickable.StopAtBounds

        MapPanel {
            id: panel
            objectName: "panel"
            model: root.model
            x: (parent.width - width) / 2
            y: Theme.gapSmall
            width: Math.min(scroll.width - 2 * Theme.margin, Theme.contentWidth)
            onOpened: (route, subject) => root.opened(route, subject)
            onWriteWanted: folder => root.model.write(view.map.sheet(), folder)
        }
    }
}
