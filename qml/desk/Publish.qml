// SPDX-License-Identifier: MIT
// The bulletin of a week: the coordinator's words beside what everybody will read, and publishing it.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property PublishViewModel model
    property string subject
    readonly property bool beside: root.width >= 740 * Math.max(1, Theme.textScale * 0.75)

    title: qsTr("Bulletin")
    subtitle: root.model.weekLine
    maximumWidth: root.beside ? 2 * Theme.contentWidth : Theme.contentWidth

    NoticeBar {
        objectName: "trouble"
        visible: root.model.trouble.length > 0
        kind: "caution"
        text: root.model.trouble
        Layout.fillWidth: true
    }

    NoticeBar {
        objectName: "written"
        visible: root.model.written.length > 0
        kind: "kept"
        text: root.model.written
        Layout.fillWidth: true
    }

    GridLayout {
        columns: root.beside ? 2 : 1
        columnSpacing: 2 * Theme.gapWide
        rowSpacing: Theme.gapWide
        Layout.fillWidth: true

        ColumnLayout {
            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop

            GridLayout {
                columns: root.columnWidth < 320 * Theme.textScale ? 1 : 2
                columnSpacing: Theme.gapSmall
                rowSpacing: Theme.gapSmall
                Layout.fillWidth: true

                PlainButton {
                    objectName: "weekBefore"
                    text: qsTr("Week before")
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    onClicked: root.model.goWeeks(-1)
                }

                PlainButton {
                    objectName: "weekAfter"
                    text: qsTr("Week after")
                    enabled: root.model.canGoOn
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    onClicked: root.model.goWeeks(1)
                }
            }

            Words {
                objectName: "standing"
                visible: text.length > 0
                text: root.model.standingLine
                kind: "strong"
                Layout.fillWidth: true
            }

            Words {
                objectName: "waiting"
                visible: text.length > 0
                text: root.model.waitingLine
                Layout.fillWidth: true
            }

            PlainButton {
                objectName: "reissue"
                visible: root.model.canReissue
                text: qsTr("Look at a new issue")
                Layout.fillWidth: true
                onClicked: root.model.lookAtReissue()
            }

            ChoiceChips {
                objectName: "language"
                visible: root.model.hasWords
                label: qsTr("Language of the readers")
                keys: ["en", "fr"]
                labels: ["English", "Français"]
                chosen: root.model.language
                Layout.fillWidth: true
                onPicked: key => root.model.language = key
            }

            FieldRemark {
                id: own
                objectName: "text"
                visible: root.model.hasWords
                label: qsTr("Text")
                hint: root.model.isOwnText ? qsTr("Your own words. Empty it for the drafted text.") : qsTr("Drafted from the counts; change it as you like. An empty line parts paragraphs.")
                Layout.fillWidth: true
                onEdited: text => root.model.edit(text)

                // What the person types stands; what the model drafts comes in when nobody types.
                Connections {
                    target: root.model
                    function onTextChanged() {
                        own.take();
                    }
                }
                Component.onCompleted: own.take()

                function take(): void {
                    if (own.text !== root.model.text && (!own.isTyping || root.model.text.length > 0 && !root.model.isOwnText))
                        own.text = root.model.text;
                }
            }

            FieldPath {
                objectName: "boundaries"
                isFolder: false
                filters: ["GeoJSON (*.geojson *.json)"]
                label: qsTr("Boundaries of districts (GeoJSON), for the map")
                hint: qsTr("Each with the name of its district. Without a file, the areas on your map that bear a district's name are taken.")
                path: root.model.boundaries
                Layout.fillWidth: true
                onEdited: path => root.model.setBoundaries(path)
            }

            FieldPath {
                objectName: "folder"
                label: qsTr("Folder for the files")
                hint: qsTr("A web page, tables, a map, an archive and a feed: to be put where people read.")
                path: root.model.folder
                Layout.fillWidth: true
                onEdited: path => root.model.folder = path
            }

            PlainButton {
                objectName: "write"
                visible: root.model.standing === "again"
                enabled: !root.model.busy
                text: qsTr("Write the files again")
                Layout.fillWidth: true
                onClicked: root.model.writeFiles()
            }

            PlainButton {
                objectName: "openPage"
                visible: root.model.written.length > 0
                text: qsTr("Open the web page")
                Layout.fillWidth: true
                onClicked: root.model.openPage()
            }
        }

        Card {
            objectName: "preview"
            visible: root.model.hasWords
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            Layout.alignment: Qt.AlignTop

            BulletinPreview {
                model: root.model
                Layout.fillWidth: true
            }
        }
    }

    AskSheet {
        id: ask
        objectName: "askPublish"
        title: qsTr("Publish this week?")
        text: qsTr("Every phone of the programme gets it at its next exchange, and the files are written. The week no longer moves with late counts.")
        yesText: qsTr("Publish")
        safeText: qsTr("Not yet")
        onYes: root.model.publish()
    }

    pinned: [
        ActButton {
            objectName: "publish"
            visible: root.model.canPublish
            enabled: !root.model.busy
            text: root.model.standing === "reissued" ? qsTr("Publish the new issue") : qsTr("Publish this week")
            Layout.fillWidth: true
            onClicked: ask.open()
        }
    ]
}
