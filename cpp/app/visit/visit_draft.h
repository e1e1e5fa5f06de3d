// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QJsonObject>
#include <QStringList>

#include <functional>
#include <optional>
#include <vector>

#include "domain/records/trap.h"
#include "domain/records/visit.h"

namespace duskrow::app {

// The records that one visit makes, half entered. Ids are given when the visit is begun, so that a visit that
// was kept twice by mischance is still one visit.
struct VisitRecords {
    domain::Visit visit;
    domain::Service lure; // `what` is set when the lure was changed
    domain::Service strip; // likewise
    domain::Service raise;
    domain::Sample sample; // its number on the bag

    // Calls act(name, kind, record) for each.
    void each(const std::function<void(const char*, const domain::RecordKind&, domain::Record&)>& act);
};

// A heavy catch while its parts are being counted; amounts in microlitres or milligrams.
struct HeavyCatchDraft {
    struct Part {
        std::optional<std::int64_t> counted;
        std::optional<std::int64_t> amount;
    };
    bool byWeight = false;
    std::optional<std::int64_t> whole;
    std::vector<Part> parts{Part{}};
};

// Where the person stands in the visit; undo leaves it alone.
struct VisitPosition {
    QString step = QStringLiteral("count");
    QString bin = QStringLiteral("pest");
    bool hasTrapTold = false; // which of two close traps it is
    bool hasLureDetails = false; // not simply "yes, all there"
    QStringList answered; // questions to which the person said that it is right
    HeavyCatchDraft heavy;
};

enum class Undoing {
    EachOne, // each change is a step of its own
    AsTyped, // changes of the same fields one after the other are one step
};

// A half-entered visit with its undo stack, as it lies in the store between two taps.
class VisitDraft {
public:
    // base   what the store holds already: nothing, or the visit to be corrected
    // begun  what stands there before the first tap: the base with its presets
    VisitDraft(VisitRecords base, VisitRecords begun)
        : m_base(std::move(base)), m_begun(std::move(begun)), m_records(m_begun)
    {
    }

    [[nodiscard]] const VisitRecords& records() const { return m_records; }
    [[nodiscard]] const VisitRecords& base() const { return m_base; }
    [[nodiscard]] const VisitPosition& position() const { return m_position; }
    [[nodiscard]] VisitPosition& position() { return m_position; }

    // False when the act changed nothing.
    bool change(const std::function<void(VisitRecords&)>& act, Undoing undoing = Undoing::EachOne);
    [[nodiscard]] bool canUndo() const { return !m_undo.empty(); }
    bool undo();
    void startOver();
    [[nodiscard]] bool isUntouched() const;

    // Only what differs from the base is written, so that a correction held for days overwrites nothing that
    // it never meant.
    [[nodiscard]] QByteArray written() const;
    // Takes up what was written. False, and nothing is changed, when it cannot be read.
    bool read(const QByteArray& body);

private:
    struct UndoStep {
        QJsonObject before; // record, then field, to what it was
        bool isTyped = false;
    };

    VisitRecords m_base;
    VisitRecords m_begun;
    VisitRecords m_records;
    VisitPosition m_position;
    std::vector<UndoStep> m_undo;
};

} // namespace duskrow::app
