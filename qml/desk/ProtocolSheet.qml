// SPDX-License-Identifier: MIT
// What a protocol says: every caution, every figure with its source, and what nobody has published.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

ScreenFrame {
    id: root

    required property ProtocolViewModel model
    property string subject
    property string part: "cautions"

    title: root.model.name
    subtitle: root.model.versionLine

    ChoiceChips {
        objectName: "part"
        label: qsTr("Part of the protocol")
        labelShown: false
        keys: ["cautions", "figures", "sources"]
        labels: [qsTr("Cautions"), qsTr("About the numbers"), qsTr("Sources")]
        chosen: root.part
        Layout.fillWidth: true
        onPicked: key => {
            root.part = key;
            root.scrollToTop();
        }
    }

    Each {
        model: root.part === "cautions" ? root.model.cautions : null

        Card {
            id: caution
            required property string title
            required property string detail
            objectName: "caution"
            spacing: Theme.gapTiny
            Layout.fillWidth: true

            Words {
                text: caution.title
                Layout.fillWidth: true
            }

            Words {
                text: caution.detail
                kind: "soft"
                Layout.fillWidth: true
            }
        }
    }

    Words {
        visible: root.part === "figures"
        text: qsTr("Each figure with where it comes from. Where nobody has published one, it says so.")
        kind: "soft"
        Layout.fillWidth: true
    }

    Each {
        model: root.part === "figures" ? root.model.figures : null

        ColumnLayout {
            id: figure
            required property string key
            required property string title
            required property string besides
            required property string detail
            required property list<string> flags
            objectName: "figure"
            spacing: Theme.gapTiny
            Layout.fillWidth: true

            SectionLabel {
                visible: text.length > 0
                text: figure.key
                Layout.fillWidth: true
            }

            Card {
                spacing: Theme.gapTiny
                Layout.fillWidth: true

                Words {
                    text: figure.title
                    kind: "small"
                    Layout.fillWidth: true
                }

                Words {
                    visible: text.length > 0
                    text: figure.besides
                    kind: "strong"
                    Layout.fillWidth: true
                }

                Words {
                    text: figure.detail
                    kind: "soft"
                    Layout.fillWidth: true
                }

                Words {
                    visible: text.length > 0
                    text: figure.flags.join(" ")
                    kind: "soft"
                    Layout.fillWidth: true
                }
            }
        }
    }

    Each {
        model: root.part === "sources" ? root.model.sources : null

        Words {
            required property string title
            objectName: "source"
            text: title
            kind: "small"
            Layout.fillWidth: true
        }
    }
}
