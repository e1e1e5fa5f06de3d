// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "app/session.h"
#include "domain/rules/stake.h"

namespace duskrow::app {

// What the steps of a set-up look up of the season, once.
struct SetupFacts {
    bool isKnown = false; // looked up already
    std::vector<domain::District> districts;
    std::vector<domain::Site> sites; // mine first, then by name
    std::vector<domain::Trap> traps; // of this season, ended ones too
    std::vector<std::string> pests; // trapped this season
    std::vector<domain::CanopyHeight> heights; // of the crop at the trap that is replaced

    [[nodiscard]] const domain::Site* site(const domain::Uuid& id) const;
    [[nodiscard]] const domain::Trap* trap(const domain::Uuid& id) const;
};

// me        comes first in the list of sites
// replaced  the trap that is replaced, or nil
domain::Result<SetupFacts> lookUpSetupFacts(
    store::Reader& reader, const domain::Uuid& season, const domain::Uuid& me, const domain::Uuid& replaced);

// Something that stands, and is not ended.
[[nodiscard]] bool stands(const domain::Trap& trap);

// One step's entries. `edited` means that an entry changed, `changed` that words made from entries did.
class SetupPart : public QObject {
    Q_OBJECT
    QML_ANONYMOUS

public:
    SetupPart(Session& session, const SetupFacts& facts, QObject* parent);

    [[nodiscard]] QString today() const;

Q_SIGNALS:
    void edited();
    void changed();

protected:
    [[nodiscard]] Session& session() const { return m_session; }
    [[nodiscard]] const SetupFacts& facts() const { return m_facts; }

    // What is wrong with a text for a field, as a sentence; empty when it may be kept.
    [[nodiscard]] static QString complaint(
        const domain::RecordKind& kind, std::string_view field, const QString& text);

private:
    Session& m_session;
    const SetupFacts& m_facts;
};

// In the device's language.
QString local(const domain::LocalText& text);
std::string clean(const QString& text); // as typed, without blanks around it
std::optional<domain::LocalDay> dayIn(const QString& text);
QString idText(const domain::Uuid& id);
domain::Uuid idIn(const QString& text); // nil when it is none

} // namespace duskrow::app
