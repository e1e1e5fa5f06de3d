// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <vector>

#include "domain/log/edit.h"

namespace duskrow::app {

// One field on which people differ, and what a coordinator chose for it.
struct DifferenceRow {
    struct Choice {
        domain::Value value;
        QString words; // "47 moths"
        QString besides = {}; // who and when, for a value that stands
    };

    domain::Uuid record;
    domain::Uuid site;
    std::string kind;
    std::string field;
    QString title;
    QString label; // of the field
    std::vector<Choice> choices;
    int standing = 0; // how many of the choices are values that people entered; the others may be chosen too
    int chosen = -1; // one of the choices, or their number for what was typed
    QString typed = {};
};

// The differences of a programme, each with the choice made so far.
class DifferenceList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by DifferencesViewModel")
    Q_PROPERTY(int count READ count NOTIFY chosenChanged FINAL)
    Q_PROPERTY(int chosen READ chosen NOTIFY chosenChanged FINAL) // how many are decided

public:
    using QAbstractListModel::QAbstractListModel;

    // Choices made for differences that are still there stay.
    void show(std::vector<DifferenceRow> rows);
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    [[nodiscard]] int chosen() const;

    Q_INVOKABLE void choose(int row, int choice); // the same again: not decided
    Q_INVOKABLE void type(int row, const QString& text);

    // What the choices come to.
    //
    // Errors  NotANumber, NotADay {what was typed}; those of checkEdit
    [[nodiscard]] domain::Result<std::vector<domain::Edit>> edits() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

Q_SIGNALS:
    void chosenChanged();

private:
    std::vector<DifferenceRow> m_rows;
};

} // namespace duskrow::app
