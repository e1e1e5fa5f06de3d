// SPDX-License-Identifier: MIT
// One field on which people differ: each value with who said it and when, and room for another.
import QtQuick
import QtQuick.Layouts
import Duskrow.App
import Duskrow.Parts
import Duskrow.Theme

Card {
    id: root

    required property DifferenceList list
    required property int index
    required property string title
    required property string label
    required property list<string> words
    required property list<string> besides
    required property int standing
    required property int chosen
    required property string typed
    required property bool other
    required property string unit
    property bool mayDecide: true

    Words {
        text: root.title
        kind: "strong"
        Layout.fillWidth: true
    }

    Words {
        text: root.label
        kind: "soft"
        Layout.fillWidth: true
    }

    // qmllint disable unqualified
    Each {
        model: root.words

        PressButton {
            id: choice

            required property string modelData
            required property int index
            readonly property bool isChosen: choice.index === root.chosen
            readonly property string who: root.besides[choice.index] ?? ""

            objectName: "choice" + choice.index
            visible: root.mayDecide || choice.index < root.standing
            enabled: root.mayDecide
            text: choice.who.length > 0 ? qsTr("%1 · %2", "value, who and when").arg(choice.modelData).arg(choice.who) : choice.modelData
            fill: choice.isChosen ? Theme.act : Theme.card
            fillPressed: choice.isChosen ? Theme.actPressed : Theme.cardPressed
            words: choice.isChosen ? Theme.actInk : Theme.ink
            edge: Theme.edge
            Layout.fillWidth: true
            Accessible.role: Accessible.RadioButton
            Accessible.checkable: true
            Accessible.checked: choice.isChosen
            onClicked: root.list.choose(root.index, choice.index)

            contentItem: Column {
                spacing: Theme.gapTiny

                Words {
                    width: parent.width
                    text: choice.modelData
                    kind: "strong"
                    color: root.mayDecide ? choice.words : Theme.ink
                    Accessible.ignored: true
                }

                Words {
                    width: parent.width
                    visible: text.length > 0
                    text: choice.who
                    kind: "small"
                    color: choice.isChosen ? Theme.actInk : Theme.ink
                    Accessible.ignored: true
                }
            }
        }
    }
    // qmllint enable unqualified

    FieldText {
        objectName: "third"
        visible: root.other && root.mayDecide
        label: root.unit.length > 0 ? qsTr("Another value, in %1").arg(root.unit) : qsTr("Another value")
        text: root.typed
        maximumLength: 200
        Layout.fillWidth: true
        onEdited: text => root.list.type(root.index, text)
    }
}
