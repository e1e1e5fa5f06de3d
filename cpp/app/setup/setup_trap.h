// SPDX-License-Identifier: MIT
#pragma once

#include <QtQml/qqmlregistration.h>

#include "app/setup/setup_part.h"

namespace duskrow::app {

// The trap itself, its lure and its killing strip.
class SetupTrap : public SetupPart {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("part of a set-up")
    Q_PROPERTY(QString tag MEMBER m_tag NOTIFY edited FINAL)
    Q_PROPERTY(QString pest MEMBER m_pest NOTIFY edited FINAL)
    Q_PROPERTY(QString trapType MEMBER m_trapType NOTIFY edited FINAL)
    Q_PROPERTY(QString pairedWith MEMBER m_pairedWith NOTIFY edited FINAL) // a trap's id, or empty
    Q_PROPERTY(bool cleaned MEMBER m_cleaned NOTIFY edited FINAL)
    Q_PROPERTY(bool handlingRead MEMBER m_handlingRead NOTIFY edited FINAL)
    Q_PROPERTY(bool mayTakeStrip READ mayTakeStrip NOTIFY changed FINAL)
    Q_PROPERTY(QString lureLot MEMBER m_lureLot NOTIFY edited FINAL)
    Q_PROPERTY(QString lureExpiry MEMBER m_lureExpiry NOTIFY edited FINAL)
    Q_PROPERTY(bool lureIn READ lureIn WRITE setLureIn NOTIFY edited FINAL)
    Q_PROPERTY(bool stripIn READ stripIn WRITE setStripIn NOTIFY edited FINAL) // never before the lure
    Q_PROPERTY(QString today READ today CONSTANT FINAL)
    Q_PROPERTY(QStringList pestKeys READ pestKeys NOTIFY changed FINAL)
    Q_PROPERTY(QStringList pestLabels READ pestLabels NOTIFY changed FINAL)
    Q_PROPERTY(QStringList typeKeys READ typeKeys NOTIFY changed FINAL)
    Q_PROPERTY(QStringList typeLabels READ typeLabels NOTIFY changed FINAL)
    Q_PROPERTY(QString typeRemark READ typeRemark NOTIFY changed FINAL)
    Q_PROPERTY(QString trapShape READ trapShape NOTIFY changed FINAL) // of the pictures
    Q_PROPERTY(QStringList pairKeys READ pairKeys NOTIFY changed FINAL)
    Q_PROPERTY(QStringList pairLabels READ pairLabels NOTIFY changed FINAL)
    Q_PROPERTY(QString tagError READ tagError NOTIFY changed FINAL)
    Q_PROPERTY(QString tagNote READ tagNote NOTIFY changed FINAL) // the same tag stands elsewhere
    Q_PROPERTY(QString inkLabel READ inkLabel NOTIFY changed FINAL) // what to write on the trap
    Q_PROPERTY(QStringList handling READ handling NOTIFY changed FINAL)
    Q_PROPERTY(QString lotError READ lotError NOTIFY changed FINAL)
    Q_PROPERTY(QString expiryNote READ expiryNote NOTIFY changed FINAL)
    Q_PROPERTY(QStringList stripCautions READ stripCautions NOTIFY changed FINAL)
    Q_PROPERTY(QString stripPlace READ stripPlace NOTIFY changed FINAL) // where it goes

public:
    using SetupPart::SetupPart;

    [[nodiscard]] bool lureIn() const { return m_lureIn; }
    void setLureIn(bool isIn);
    [[nodiscard]] bool stripIn() const { return m_stripIn; }
    void setStripIn(bool isIn);
    [[nodiscard]] bool mayTakeStrip() const { return m_lureIn || !hasLure(); }

    [[nodiscard]] QStringList pestKeys() const;
    [[nodiscard]] QStringList pestLabels() const;
    [[nodiscard]] QStringList typeKeys() const;
    [[nodiscard]] QStringList typeLabels() const;
    [[nodiscard]] QString typeRemark() const;
    [[nodiscard]] QString trapShape() const;
    [[nodiscard]] QStringList pairKeys() const;
    [[nodiscard]] QStringList pairLabels() const;
    [[nodiscard]] QString tagError() const;
    [[nodiscard]] QString tagNote() const;
    [[nodiscard]] QString inkLabel() const;
    [[nodiscard]] QStringList handling() const;
    [[nodiscard]] QString lotError() const;
    [[nodiscard]] QString expiryNote() const;
    [[nodiscard]] QStringList stripCautions() const;
    [[nodiscard]] QString stripPlace() const;

    [[nodiscard]] const domain::Protocol* protocol() const;
    [[nodiscard]] const domain::TrapType* type() const;
    [[nodiscard]] bool hasLure() const;
    [[nodiscard]] bool hasStrip() const;

    void preset(); // what the season's facts suggest, where nothing was entered
    bool passTrap();
    bool passLure();
    void setSite(const domain::Uuid& site); // where it will stand; nil for a new one
    void fill(domain::Trap& trap) const;
    void takeFrom(const domain::Trap& earlier); // at the same spot: same pest, same type

private:
    [[nodiscard]] std::vector<const domain::Trap*> pairs() const;

    QString m_tag;
    QString m_pest;
    QString m_trapType;
    QString m_pairedWith;
    bool m_cleaned = false;
    bool m_handlingRead = false;
    QString m_lureLot;
    QString m_lureExpiry;
    bool m_lureIn = false;
    bool m_stripIn = false;
    domain::Uuid m_site;
    bool m_trapAsked = false;
    bool m_lureAsked = false;
};

} // namespace duskrow::app
