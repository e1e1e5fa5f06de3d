// SPDX-License-Identifier: MIT
#pragma once

#include <QByteArray>
#include <QFile>
#include <QHash>
#include <QList>
#include <QString>

namespace duskrow::tests {

// One row of a golden table. A column or number that is not there ends the test run.
class GoldenRow {
public:
    explicit GoldenRow(QHash<QByteArray, QByteArray> fields) : m_fields(std::move(fields)) { }

    [[nodiscard]] QByteArray text(const QByteArray& column) const
    {
        if (!m_fields.contains(column)) qFatal("no golden column %s", column.constData());
        return m_fields.value(column);
    }
    [[nodiscard]] bool isBlank(const QByteArray& column) const { return text(column).isEmpty(); }
    [[nodiscard]] double number(const QByteArray& column) const { return numberIn(text(column)); }
    [[nodiscard]] qint64 whole(const QByteArray& column) const
    {
        bool isRead = false;
        const qint64 value = text(column).toLongLong(&isRead);
        if (!isRead) qFatal("golden column %s is not a whole number", column.constData());
        return value;
    }
    // Several numbers in one field, parted by blanks.
    [[nodiscard]] QList<double> numbers(const QByteArray& column) const
    {
        QList<double> values;
        for (const QByteArray& part : text(column).split(' ')) values.append(numberIn(part));
        return values;
    }

private:
    static double numberIn(const QByteArray& field)
    {
        bool isRead = false;
        const double value = field.toDouble(&isRead);
        if (!isRead) qFatal("golden field '%s' is not a number", field.constData());
        return value;
    }

    QHash<QByteArray, QByteArray> m_fields;
};

// The rows of tests/golden/<name>: lines that begin with # are comments, then one line of column names.
// No field is quoted.
inline QList<GoldenRow> readGolden(const char* name)
{
    QFile file(QStringLiteral(DUSKROW_SOURCE_DIR "/tests/golden/") + QString::fromLatin1(name));
    if (!file.open(QIODevice::ReadOnly)) qFatal("cannot read golden table %s", name);
    QList<QByteArray> columns;
    QList<GoldenRow> rows;
    for (const QByteArray& read : file.readAll().split('\n')) {
        const QByteArray line = read.trimmed();
        if (line.isEmpty() || line.startsWith('#')) continue;
        const QList<QByteArray> fields = line.split(',');
        if (columns.isEmpty()) {
            columns = fields;
            continue;
        }
        if (fields.size() != columns.size()) qFatal("golden table %s: %s", name, line.constData());
        QHash<QByteArray, QByteArray> row;
        for (qsizetype i = 0; i < fields.size(); ++i) row.insert(columns[i], fields[i]);
        rows.append(GoldenRow(row));
    }
    if (rows.isEmpty()) qFatal("golden table %s has no rows", name);
    return rows;
}

} // namespace duskrow::tests
