// SPDX-License-Identifier: MIT
#pragma once

#include <QtQml/qqmlregistration.h>

#include "app/setup/setup_part.h"
#include "domain/rules/stake.h"

namespace duskrow::app {

// The entrance against the crop.
class SetupStake : public SetupPart {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("part of a set-up")
    Q_PROPERTY(
        int entrance MEMBER m_entrance NOTIFY edited FINAL) // cm above the ground; below zero: not measured
    Q_PROPERTY(int canopy MEMBER m_canopy NOTIFY edited FINAL) // cm; below zero: not measured
    Q_PROPERTY(QString heightRule MEMBER m_heightRule NOTIFY edited FINAL)
    Q_PROPERTY(int entranceMm READ entranceMm NOTIFY changed FINAL)
    Q_PROPERTY(int canopyMm READ canopyMm NOTIFY changed FINAL)
    Q_PROPERTY(QString stage READ stage NOTIFY changed FINAL) // of StakePicture, by the height of the crop
    Q_PROPERTY(QString entranceWords READ entranceWords NOTIFY changed FINAL)
    Q_PROPERTY(QString canopyWords READ canopyWords NOTIFY changed FINAL)
    Q_PROPERTY(QString clearance READ clearance NOTIFY changed FINAL)
    Q_PROPERTY(QString description READ description NOTIFY changed FINAL)
    Q_PROPERTY(QString warning READ warning NOTIFY changed FINAL) // at or below the canopy
    Q_PROPERTY(QString growth READ growth NOTIFY changed FINAL) // when the crop reaches it
    Q_PROPERTY(QString advice READ advice NOTIFY changed FINAL) // of the protocol, on the height
    Q_PROPERTY(QStringList ruleKeys READ ruleKeys CONSTANT FINAL)
    Q_PROPERTY(QStringList ruleLabels READ ruleLabels CONSTANT FINAL)

public:
    using SetupPart::SetupPart;

    [[nodiscard]] int entranceMm() const { return std::max(m_entrance, 0) * 10; }
    [[nodiscard]] int canopyMm() const { return std::max(m_canopy, 0) * 10; }
    [[nodiscard]] QString stage() const;
    [[nodiscard]] QString entranceWords() const;
    [[nodiscard]] QString canopyWords() const;
    [[nodiscard]] QString clearance() const;
    [[nodiscard]] QString description() const;
    [[nodiscard]] QString warning() const;
    [[nodiscard]] QString growth() const;
    [[nodiscard]] QString advice() const;
    [[nodiscard]] QStringList ruleKeys() const;
    [[nodiscard]] QStringList ruleLabels() const;

    // The protocol and crop that the heights belong to; presets the entrance and the rule.
    void setProtocol(const domain::Protocol* protocol);
    void takeFrom(const domain::Trap& earlier);
    void fill(domain::Trap& trap) const;

private:
    [[nodiscard]] bool isMeasured() const { return m_entrance >= 0 && m_canopy >= 0; }
    [[nodiscard]] domain::Clearance gap() const;

    static constexpr int notPreset = -2;
    int m_entrance = notPreset;
    int m_canopy = -1;
    QString m_heightRule;
    const domain::Protocol* m_protocol = nullptr;
};

} // namespace duskrow::app
