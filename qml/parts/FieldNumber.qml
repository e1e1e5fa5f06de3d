// SPDX-License-Identifier: MIT
// A number with minus and plus. Empty means "not observed", which is not zero; letters are refused in words.
import QtQuick
import QtQuick.Layouts
import Duskrow.Theme

ColumnLayout {
    id: root

    required property string label
    property bool known: true
    property real value: 0
    property real from: 0
    property real to: 1000000
    property real step: 1
    property int decimals: 0
    property string unit: ""
    property string hint: ""
    property string error: ""
    property bool emptyAllowed: true
    readonly property bool valid: root.complaint.length === 0
    readonly property string wanted: root.known ? root.spoken(root.value) : ""
    property string complaint: ""
    property bool taking: false
    property bool moved: false

    signal edited(real value)
    signal cleared

    function spoken(amount: real): string {
        const words = amount.toLocaleString(Qt.locale(), "f", root.decimals);
        return words.split(Qt.locale().groupSeparator).join("");
    }

    function takeFocus(): void {
        box.takeFocus();
    }

    // The sentence that refuses what was typed, or nothing when it is a number within bounds.
    function judge(typed: string): string {
        if (typed.length === 0)
            return root.emptyAllowed ? "" : qsTr("A number is needed here.");
        return root.isNumber(typed) ? root.judgeSize(root.parse(typed)) : root.refusal();
    }

    function isNumber(typed: string): bool {
        return (root.decimals > 0 ? /^[-−]?[0-9]+([.,][0-9]*)?$/ : /^[-−]?[0-9]+$/).test(typed);
    }

    function refusal(): string {
        const example = root.spoken(root.from + root.step);
        if (root.decimals > 0)
            return qsTr("Only a number can stand here, for example %1.").arg(example);
        return qsTr("Only a whole number can stand here, for example %1.").arg(example);
    }

    function judgeSize(amount: real): string {
        if (amount >= root.from && amount <= root.to)
            return "";
        return qsTr("It must lie between %1 and %2.").arg(root.spoken(root.from)).arg(root.spoken(root.to));
    }

    function parse(words: string): real {
        return Number(words.replace("−", "-").replace(Qt.locale().decimalPoint, ".").replace(",", "."));
    }

    function isEcho(typed: string): bool {
        if (root.judge(typed).length > 0)
            return false;
        return typed.length === 0 ? !root.known : root.known && root.parse(typed) === root.value;
    }

    function take(typed: string): void {
        root.complaint = root.judge(typed);
        if (!root.valid)
            return;
        root.taking = true;
        if (typed.length === 0)
            root.cleared();
        else
            root.edited(root.parse(typed));
        root.taking = false;
        if (root.moved)
            root.follow();
    }

    // A value from outside replaces what stands in the box, unless it only echoes what is being typed.
    function follow(): void {
        root.moved = false;
        if (root.isEcho(box.text.trim()))
            return;
        box.text = root.wanted;
        root.complaint = "";
    }

    function stepBy(by: real): void {
        const start = root.known ? root.value : root.from;
        const scale = Math.pow(10, root.decimals);
        const next = root.known ? Math.round((start + by) * scale) / scale : Math.max(root.from, root.step);
        root.complaint = "";
        root.edited(Math.max(root.from, Math.min(root.to, next)));
        box.text = root.wanted;
    }

    spacing: Theme.gapTiny
    // What is typed changes `known` and `value` one after the other: only both together can be judged.
    onWantedChanged: {
        if (root.taking)
            root.moved = true;
        else
            root.follow();
    }
    Component.onCompleted: box.text = root.wanted

    FieldLabel {
        text: root.label
        hint: root.hint
        Layout.fillWidth: true
    }

    StepperBox {
        id: box
        name: root.unit ? qsTr("%1 in %2").arg(root.label).arg(root.unit) : root.label
        description: root.complaint || root.error || root.hint
        lessName: qsTr("%1: less by %2").arg(root.label).arg(root.spoken(root.step))
        moreName: qsTr("%1: more by %2").arg(root.label).arg(root.spoken(root.step))
        sample: root.to > 9999 ? "000000" : "0000"
        unit: root.unit
        step: root.step
        decimals: root.decimals
        bad: !root.valid || root.error.length > 0
        canLess: !root.known || root.value > root.from
        canMore: !root.known || root.value < root.to
        inputMethodHints: root.decimals > 0 ? Qt.ImhFormattedNumbersOnly : Qt.ImhDigitsOnly
        Layout.fillWidth: true
        onTyped: text => root.take(text.trim())
        onStepped: direction => root.stepBy(direction * root.step)
    }

    FieldError {
        text: root.complaint || root.error
        Layout.fillWidth: true
    }
}
