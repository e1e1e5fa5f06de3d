// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QString>

#include <optional>

#include "domain/base/result.h"
#include "domain/records/visit.h"
#include "text/animal.h"

namespace duskrow::app {

// One trap's count while it is typed at the desk.
struct TypingRow {
    domain::Uuid trap = {};
    domain::Uuid site = {};
    domain::Uuid visit = {}; // given when typing begins: what is kept twice by mischance is still one visit
    QString title = {};
    QString pest = {}; // what is counted: "bertha armyworm"
    text::Animal animal = {};
    QString section = {};
    QString count = {}; // as typed
    QString who = {}; // as typed; at first whoever has the trap
    QString error = {};
    QString kept = {}; // a sentence, once it is on disk
    bool isKeeping = false;
    bool isTouched = false; // something was typed and is not kept yet
};

// What holds for all rows until it is changed.
struct TypingHow {
    domain::LocalDay day;
    domain::ReportedHow how = domain::ReportedHow::Phone;
    std::optional<bool> emptied = true; // as protocols ask for; nothing when nobody said
};

// Moths as typed: digits alone. Errors  Empty, NotANumber, OutOfRange {"pest" ...}
domain::Result<domain::Moths> typedMoths(const QString& typed);

// The visit that a row makes. It bears no time of day: nobody noted one.
domain::Visit visitOf(const TypingRow& row, const TypingHow& how, domain::Moths moths);
// The same where somebody reported that there is nothing to count. The reason says whether it was emptied.
domain::Visit visitOf(const TypingRow& row, const TypingHow& how, domain::NoCountReason reason);

// What was typed, for a draft. Another version's draft is dropped.
QByteArray draftOf(const TypingRow& row);
void takeDraft(TypingRow& row, const QByteArray& draft);
QByteArray draftOf(const TypingHow& how);
void takeDraft(TypingHow& how, const QByteArray& draft);

} // namespace duskrow::app
