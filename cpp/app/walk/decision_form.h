// SPDX-License-Identifier: MIT
#pragma once

#include <QJsonObject>
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "domain/records/walk.h"

namespace duskrow::app {

// What a decision rests on besides the larvae, as typed: money, label, cutting day.
class DecisionForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by DecisionViewModel")
    Q_PROPERTY(
        bool inParts MEMBER m_inParts NOTIFY edited FINAL) // product, application and wheel tracks apart
    Q_PROPERTY(QString cost MEMBER m_cost NOTIFY edited FINAL)
    Q_PROPERTY(QString product MEMBER m_product NOTIFY edited FINAL)
    Q_PROPERTY(QString application MEMBER m_application NOTIFY edited FINAL)
    Q_PROPERTY(QString tracks MEMBER m_tracks NOTIFY edited FINAL)
    Q_PROPERTY(QString costUnit MEMBER m_costUnit NOTIFY edited FINAL) // "CAD/ac"
    Q_PROPERTY(QString price MEMBER m_price NOTIFY edited FINAL)
    Q_PROPERTY(QString priceUnit MEMBER m_priceUnit NOTIFY edited FINAL) // "CAD/bu"
    Q_PROPERTY(bool dry MEMBER m_dry NOTIFY edited FINAL) // a very dry season, the user's own judgement
    Q_PROPERTY(QString divisor MEMBER m_divisor NOTIFY edited FINAL)
    Q_PROPERTY(QString labelDays MEMBER m_labelDays NOTIFY edited FINAL)
    Q_PROPERTY(QString cuttingDay MEMBER m_cuttingDay NOTIFY edited FINAL)
    Q_PROPERTY(QString decided MEMBER m_decided NOTIFY edited FINAL) // control, no_control, look_again
    Q_PROPERTY(QString remark MEMBER m_remark NOTIFY edited FINAL)

public:
    using QObject::QObject;

    // publishedDivisor  the preset of the dry season; empty where the protocol knows none
    void take(const domain::Decision& decision, const QString& publishedDivisor);

    // What the entries come to; what is no number or no day stays out.
    void fill(domain::Decision& decision) const;
    // Money was begun to be said.
    [[nodiscard]] bool hasMoney() const;

    [[nodiscard]] QJsonObject entries() const;
    void takeEntries(const QJsonObject& entries);

Q_SIGNALS:
    void edited();

private:
    bool m_inParts = false;
    QString m_cost;
    QString m_product;
    QString m_application;
    QString m_tracks;
    QString m_costUnit = QStringLiteral("CAD/ac");
    QString m_price;
    QString m_priceUnit = QStringLiteral("CAD/bu");
    bool m_dry = false;
    QString m_divisor;
    QString m_labelDays;
    QString m_cuttingDay;
    QString m_decided;
    QString m_remark;
};

} // namespace duskrow::app
