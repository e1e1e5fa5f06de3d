// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "domain/records/visit.h"
#include "text/animal.h"

namespace duskrow::app {

struct SampleRow {
    domain::Sample sample;
    domain::Uuid site;
    QString trapTitle;
    std::string pest = {};
    text::Animal animal = {};
};

// Bagged moths, those still to be named first.
class SampleList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by SamplesViewModel")

public:
    enum Role { SampleId = Qt::UserRole, Number, Trap, State, StateWords, Summary, IsNamed };

    explicit SampleList(QObject* parent) : QAbstractListModel(parent) { }

    void take(std::vector<SampleRow> rows);
    [[nodiscard]] const SampleRow* find(const QString& sampleId) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<SampleRow> m_rows;
};

} // namespace duskrow::app
