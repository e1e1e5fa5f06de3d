// SPDX-License-Identifier: MIT
#pragma once

#include <QAbstractListModel>
#include <QSet>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace duskrow::app {

// One line of the desk: a trap with its week, or a flag.
struct DeskLine {
    QString key = {};
    QString trap = {};
    QString title = {};
    QString besides = {}; // who and when
    QString right = {}; // the count, or how it stands
    QString remark = {}; // a flag's sentence
    QString section = {};
    bool isDue = false; // somebody is waited for, or something is to be looked at
    bool isNew = false; // came in since the coordinator last looked
    bool canMark = false;

    bool operator==(const DeskLine&) const = default;
};

class DeskList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a view model")
    Q_PROPERTY(int count READ count NOTIFY countChanged FINAL)
    Q_PROPERTY(int marked READ markedCount NOTIFY markedChanged FINAL)

public:
    using QAbstractListModel::QAbstractListModel;

    // The same lines again change nothing. Marks of lines that are gone go with them.
    void show(std::vector<DeskLine> lines);
    [[nodiscard]] int count() const { return static_cast<int>(m_lines.size()); }
    [[nodiscard]] int markedCount() const { return static_cast<int>(m_marked.size()); }
    [[nodiscard]] const QSet<QString>& marked() const { return m_marked; }

    Q_INVOKABLE void toggle(int row);
    Q_INVOKABLE void markAll(); // or none, where all are
    Q_INVOKABLE QString trapAt(int row) const;
    Q_INVOKABLE QString keyAt(int row) const;
    Q_INVOKABLE int rowOf(const QString& key) const; // -1 when it is not there

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

Q_SIGNALS:
    void countChanged();
    void markedChanged();

private:
    [[nodiscard]] bool has(int row) const { return row >= 0 && row < count(); }
    [[nodiscard]] const DeskLine& at(int row) const { return m_lines[static_cast<std::size_t>(row)]; }

    std::vector<DeskLine> m_lines;
    QSet<QString> m_marked;
};

} // namespace duskrow::app
