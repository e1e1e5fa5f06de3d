// SPDX-License-Identifier: MIT
// A day, typed as year-month-day or moved by one, with the weekday in words so that a slip is seen.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property string label
    property string day: ""
    property string today: ""
    property string hint: ""
    property string error: ""
    property string complaint: ""
    property bool unfinished: false
    property bool emptyAllowed: false
    readonly property bool valid: root.complaint.length === 0 && !root.unfinished
    readonly property string words: root.spoken(root.day)

    signal edited(string day)
    signal cleared

    // Noon in universal time, so that no zone and no summer time can move the day.
    function parse(text: string): date {
        const match = /^([0-9]{4})-([0-9]{2})-([0-9]{2})$/.exec(text);
        if (!match)
            return new Date(NaN);
        const found = new Date(Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3]), 12));
        const same = found.getUTCMonth() === Number(match[2]) - 1 && found.getUTCDate() === Number(match[3]);
        return same ? found : new Date(NaN);
    }

    function write(moment: date): string {
        return moment.toISOString().substring(0, 10);
    }

    function spoken(text: string): string {
        const at = root.parse(text);
        if (isNaN(at.getTime()))
            return "";
        const local = new Date(at.getUTCFullYear(), at.getUTCMonth(), at.getUTCDate(), 12);
        const full = local.toLocaleDateString(Qt.locale(), "dddd d MMMM yyyy");
        if (root.today.length === 0)
            return full;
        const apart = Math.round((at.getTime() - root.parse(root.today).getTime()) / 86400000);
        if (apart === 0)
            return qsTr("Today, %1").arg(full);
        return apart === -1 ? qsTr("Yesterday, %1").arg(full) : full;
    }

    function take(text: string): void {
        const at = root.parse(text);
        const isDay = !isNaN(at.getTime());
        const isCleared = root.emptyAllowed && text.length === 0;
        root.unfinished = !isDay && !isCleared && /^([0-9]{0,4}|[0-9]{4}-[0-9]{0,2}|[0-9]{4}-[0-9]{2}-[0-9]?)$/.test(text);
        root.complaint = isDay || isCleared || root.unfinished ? "" : root.refusal();
        if (isDay)
            root.edited(root.write(at));
        else if (isCleared)
            root.cleared();
    }

    function refusal(): string {
        return qsTr("A day is written as year-month-day, for example 2026-07-08.");
    }

    // What was left half typed is said when the person goes on, not while they type.
    function finish(): void {
        if (root.unfinished)
            root.complaint = root.refusal();
    }

    function settle(): void {
        box.text = root.day;
        root.complaint = "";
        root.unfinished = false;
    }

    function stepBy(days: int): void {
        let at = root.parse(root.day);
        if (isNaN(at.getTime()))
            at = root.parse(root.today);
        if (isNaN(at.getTime()))
            return;
        root.edited(root.write(new Date(at.getTime() + days * 86400000)));
        root.settle();
    }

    spacing: Theme.gapTiny
    // A day from outside replaces what stands in the box, unless it only echoes what is being typed.
    onDayChanged: {
        const typed = root.parse(box.text);
        if (isNaN(typed.getTime()) || root.write(typed) !== root.day)
            root.settle();
    }
    Component.onCompleted: box.text = root.day

    FieldLabel {
        text: root.label
        hint: root.hint
        Layout.fillWidth: true
    }

    StepperBox {
        id: box
        name: root.label
        description: root.complaint || root.error || root.words
        lessName: qsTr("%1: one day earlier").arg(root.label)
        moreName: qsTr("%1: one day later").arg(root.label)
        lessObject: "dayBefore"
        moreObject: "dayAfter"
        sample: "0000-00-00"
        pixelSize: Theme.typeBody
        bad: !root.valid || root.error.length > 0
        inputMethodHints: Qt.ImhDate | Qt.ImhPreferNumbers
        Layout.fillWidth: true
        onTyped: text => root.take(text.trim())
        onFinished: root.finish()
        onStepped: direction => root.stepBy(direction)
    }

    Words {
        objectName: "words"
        visible: root.valid && text.length > 0
        text: root.words
        kind: "small"
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }

    FieldError {
        text: root.complaint || root.error
        Layout.fillWidth: true
    }
}
