// SPDX-License-Identifier: MIT
// A statement and whether it holds; the whole row answers.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Duskrow.Theme

T.Switch {
    id: root

    property string detail: ""

    implicitWidth: 200
    implicitHeight: Math.max(Theme.touchWide, implicitContentHeight + topPadding + bottomPadding)
    verticalPadding: Theme.gapSmall
    focusPolicy: Qt.StrongFocus
    spacing: Theme.gap
    opacity: root.enabled ? 1 : 0.5

    Accessible.name: root.text
    Accessible.description: root.detail
    Accessible.role: Accessible.CheckBox
    Accessible.checkable: true
    Accessible.checked: root.checked
    Accessible.onPressAction: {
        root.toggle();
        root.toggled();
    }
    Accessible.onToggleAction: {
        root.toggle();
        root.toggled();
    }

    Keys.onReturnPressed: {
        root.toggle();
        root.toggled();
    }
    Keys.onEnterPressed: {
        root.toggle();
        root.toggled();
    }

    background: Item {
        FocusRing {
            shown: root.visualFocus
            inner: Theme.radiusSmall
            gap: 0
        }
    }

    indicator: Rectangle {
        x: root.mirrored ? 0 : root.width - width
        y: (root.height - height) / 2
        width: 56
        height: 32
        radius: height / 2
        color: root.checked ? Theme.act : Theme.card
        border.width: 2
        border.color: root.checked ? Theme.act : Theme.edge

        Rectangle {
            readonly property bool atRight: root.checked !== root.mirrored
            x: atRight ? parent.width - width - 5 : 5
            anchors.verticalCenter: parent.verticalCenter
            width: 22
            height: 22
            radius: 11
            color: root.checked ? Theme.next : Theme.edge

            Behavior on x  {
                NumberAnimation {
                    duration: Theme.quick
                }
            }
        }
    }

    contentItem: ColumnLayout {
        spacing: 2

        Words {
            text: root.text
            Layout.fillWidth: true
            Layout.rightMargin: root.indicator.width + root.spacing
            Accessible.ignored: true
        }

        Words {
            visible: text.length > 0
            text: root.detail
            kind: "soft"
            Layout.fillWidth: true
            Layout.rightMargin: root.indicator.width + root.spacing
            Accessible.ignored: true
        }
    }
}
