// SPDX-License-Identifier: MIT
// What everybody reads of a week: nothing else leaves the desk.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Paint
import Duskrow.Parts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property PublishViewModel model

    spacing: Theme.gap

    Words {
        objectName: "previewTitle"
        text: root.model.title
        kind: "title"
        Layout.fillWidth: true
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }

    Words {
        text: root.model.besides
        kind: "soft"
        Layout.fillWidth: true
    }

    Words {
        objectName: "previewText"
        text: root.model.text
        Layout.fillWidth: true
    }

    PictureItem {
        objectName: "previewMap"
        picture: root.model.map(Math.min(width, 560), root.model.revision)
        dark: Theme.dark
        fontFamily: Theme.family
        Layout.fillWidth: true
        Layout.maximumWidth: 560
        Layout.preferredHeight: Math.round(Math.min(width, 560) * picture.ratio)

        Accessible.role: Accessible.Graphic
        Accessible.name: picture.title + ". " + picture.description
    }

    Repeater {
        model: root.model.areas

        AreaCard {
            required property string detail
            required property list<string> flags
            objectName: "area"
            lines: flags
            reason: detail
            Layout.fillWidth: true
        }
    }

    Words {
        text: root.model.cellsLine
        kind: "soft"
        Layout.fillWidth: true
    }

    PictureItem {
        objectName: "previewChart"
        picture: root.model.chart(Math.min(width, 560), root.model.revision)
        dark: Theme.dark
        fontFamily: Theme.family
        Layout.fillWidth: true
        Layout.maximumWidth: 560
        Layout.preferredHeight: Math.round(Math.min(width, 560) * picture.ratio)

        Accessible.role: Accessible.Graphic
        Accessible.name: picture.title + ". " + picture.description
    }

    Repeater {
        model: root.model.blocks

        ColumnLayout {
            id: block
            required property string title
            required property list<string> flags
            spacing: Theme.gapSmall
            Layout.fillWidth: true

            SectionLabel {
                text: block.title
                Layout.fillWidth: true
            }

            Words {
                objectName: "block"
                text: block.flags.join("\n")
                kind: "small"
                Layout.fillWidth: true
            }
        }
    }
}
