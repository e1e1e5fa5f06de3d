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

    FieldText {
        objectName: "borrower"
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
