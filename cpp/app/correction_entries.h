// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QJsonObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <map>
#include <optional>
#include <vector>

#include "domain/base/by_name.h"
#include "domain/records/field.h"

namespace duskrow::app {

// A choice that a field may hold, in words.
struct EntryChoice {
    QString key; // as it is kept
    QString words;
};

// The fields of one record that a person may set right, each as it stands and as it was typed.
class CorrectionEntries : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by CorrectionViewModel")

public:
    using Values = domain::ByName<domain::Value>;
    using Choices = std::map<std::string, std::vector<EntryChoice>>; // by field, where it names other records

    using QAbstractListModel::QAbstractListModel;

    // Shows a record as it stands; what was typed before is forgotten.
    void show(
        const domain::RecordKind& kind, const domain::ByName<domain::Value>& values, const Choices& choices);

    // What differs from what stands, field by field. An entry set back to what stood is no change.
    [[nodiscard]] Values changed() const;

    // What was typed, for a draft.
    [[nodiscard]] QJsonObject typed() const;
    void takeTyped(const QJsonObject& typed);

    Q_INVOKABLE void setText(int row, const QString& text); // also of a choice and of a day; empty for none
    Q_INVOKABLE void setNumber(int row, double number); // in the unit that is typed
    Q_INVOKABLE void clear(int row);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

Q_SIGNALS:
    void edited();

private:
    struct Entry {
        const domain::Field* field = nullptr;
        domain::Value held; // as it stands
        domain::Value value; // as typed
        std::vector<EntryChoice> choices;
    };
    void set(int row, domain::Value value);
    [[nodiscard]] QString sort(const Entry& entry) const;
    [[nodiscard]] QVariant bound(const Entry& entry, int role) const;

    const domain::RecordKind* m_kind = nullptr;
    std::vector<Entry> m_entries;
};

} // namespace duskrow::app
