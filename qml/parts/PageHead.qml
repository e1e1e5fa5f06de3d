// SPDX-License-Identifier: MIT
// The head of a page: the way back, where we are, and one line about it.
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Duskrow.Theme

RowLayout {
    id: root

    required property string title
    property string subtitle: ""
    property string above: "" // a quiet line over the title
    property bool canGoBack: true
    property bool large: !root.canGoBack

    readonly property real firstLine: Math.ceil(1.4 * (root.large ? Theme.typeHeading : Theme.typeHead))

    signal back

    spacing: 0

    T.Button {
        id: backButton
        objectName: "back"
        visible: root.canGoBack
        implicitWidth: Theme.touch
        implicitHeight: Theme.touch
        focusPolicy: Qt.StrongFocus
        Layout.alignment: Qt.AlignTop
        Layout.leftMargin: -Theme.gapWide
        Layout.topMargin: Math.max(0, (root.firstLine - Theme.touch) / 2)
        onClicked: root.back()

        Accessible.name: qsTr("Go back")
        Accessible.role: Accessible.Button
        Accessible.onPressAction: root.back()

        Keys.onReturnPressed: root.back()
        Keys.onEnterPressed: root.back()

        background: Item {
            FocusRing {
                shown: backButton.visualFocus
                gap: -2 * Theme.ring
            }
        }

        contentItem: Item {
            Chevron {
                anchors.centerIn: parent
                back: true
            }
        }
    }

    ColumnLayout {
        spacing: Theme.gapTiny
        Layout.fillWidth: true
        Layout.alignment: Qt.AlignTop
        Layout.topMargin: root.canGoBack ? Math.max(0, (Theme.touch - root.firstLine) / 2) : 0

        Words {
            objectName: "above"
            text: root.above
            kind: "soft"
            visible: text.length > 0
            Layout.fillWidth: true
        }

        Words {
            objectName: "title"
            text: root.title
            kind: root.large ? "heading" : "head"
            Layout.fillWidth: true
            Accessible.role: Accessible.Heading
            Accessible.name: root.title
        }

        Words {
            objectName: "subtitle"
            text: root.subtitle
            kind: "soft"
            visible: text.length > 0
            Layout.fillWidth: true
        }
    }
}
