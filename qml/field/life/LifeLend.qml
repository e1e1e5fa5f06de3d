// SPDX-License-Identifier: MIT
// The trap is lent: to whom and until when.
import QtQuick
import QtQuick.Layouts
import Duskrow.Parts

LifeAct {
    id: root

    title: qsTr("Lend the trap")
    dayLabel: qsTr("From")
    canKeep: until.valid

    ChoiceChips {
        objectName: "member"
        visible: root.model.memberKeys.length > 0
        label: qsTr("To one of the programme?")
        keys: root.model.memberKeys.concat([""])
        labels: root.model.memberNames.concat([qsTr("somebody else")])
        chosen: root.form.member
        Layout.fillWidth: true
        onPicked: key => {
            root.form.member = key;
            root.form.borrower = key.length > 0 ? root.model.memberNames[root.model.memberKeys.indexOf(key)] : "";
        }
    }

    Words {
        objectName: "mayReport"
        visible: root.form.member.length > 0
        text: qsTr("What they count there until then is theirs to report.")
        kind: "soft"
        Layout.fillWidth: true
    }

    FieldText {
        objectName: "borrower"
        visible: root.form.member.length === 0
        label: qsTr("To whom?")
        text: root.form.borrower
        Layout.fillWidth: true
        onEdited: text => root.form.borrower = text
    }

    FieldDay {
        id: until
        objectName: "until"
        label: qsTr("Until")
        hint: qsTr("Then it is yours again. It may come back earlier.")
        day: root.form.until
        today: root.model.today
        Layout.fillWidth: true
        onEdited: day => root.form.until = day
    }
}
