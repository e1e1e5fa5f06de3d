// SPDX-License-Identifier: MIT
#pragma once

#include <map>

#include "app/exchange/record_marks.h"
#include "app/row_list.h"
#include "app/view_model.h"
#include "domain/log/fold.h"

namespace duskrow::app {

// The history of one record: who changed what and when, with the value before and after; and the ways to set
// it right. Nothing is deleted.
class HistoryViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString title READ title NOTIFY refreshed FINAL)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY refreshed FINAL)
    Q_PROPERTY(QString withdrawn READ withdrawn NOTIFY refreshed FINAL) // why; empty while it stands
    Q_PROPERTY(QStringList marks READ marks NOTIFY refreshed FINAL) // how far it got, who differs
    Q_PROPERTY(bool isFound READ isFound NOTIFY refreshed FINAL)
    Q_PROPERTY(QString warning READ warning NOTIFY refreshed FINAL) // what withdrawing it takes along
    Q_PROPERTY(QString correctRoute READ correctRoute NOTIFY refreshed FINAL) // empty: nothing to correct
    Q_PROPERTY(QString correctSubject READ correctSubject NOTIFY refreshed FINAL)
    Q_PROPERTY(duskrow::app::RowList* changes READ changes CONSTANT FINAL) // newest first
    Q_PROPERTY(QString reason MEMBER m_reason NOTIFY reasonChanged FINAL) // for withdrawing, as typed
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    // subject  "visit/<id>", and so for every kind of record
    HistoryViewModel(Session& session, const QString& subject, QObject* parent = nullptr);

    [[nodiscard]] QString title() const { return m_title; }
    [[nodiscard]] QString subtitle() const { return m_subtitle; }
    [[nodiscard]] QString withdrawn() const { return m_withdrawn; }
    [[nodiscard]] QStringList marks() const { return m_marks; }
    [[nodiscard]] bool isFound() const { return m_isFound; }
    [[nodiscard]] QString warning() const;
    [[nodiscard]] QString correctRoute() const;
    [[nodiscard]] QString correctSubject() const;
    [[nodiscard]] RowList* changes() { return &m_changes; }
    [[nodiscard]] bool busy() const { return m_busy; }

    // Takes the record back, with `reason`.
    Q_INVOKABLE void withdraw();
    // Lets it stand again.
    Q_INVOKABLE void bringBack();

Q_SIGNALS:
    void refreshed();
    void reasonChanged();
    void busyChanged();

private:
    void refresh();
    void readMarks(bool isBroughtBack);
    void readNames();
    void nameIt(const domain::Folded& now);
    [[nodiscard]] domain::Uuid firstTrapAt(const domain::Uuid& site);
    [[nodiscard]] QString protocolWords(const std::string& field, const domain::Value& value) const;
    [[nodiscard]] QString nameOf(const domain::Uuid& id) const;
    [[nodiscard]] Row rowOf(const domain::Change& change, const std::vector<domain::Change>& all) const;
    [[nodiscard]] QString lineOf(
        const std::string& field, const domain::FieldSet& set, const std::vector<domain::Change>& all) const;
    void keep(const std::string& reason);

    std::string m_kind;
    domain::Uuid m_record;
    domain::Uuid m_site;
    domain::Uuid m_trap;
    std::string m_pest;
    std::map<domain::Uuid, QString> m_names;
    QString m_title;
    QString m_subtitle;
    QString m_withdrawn;
    QString m_reason;
    QStringList m_marks;
    RecordMarks m_recordMarks;
    RowList m_changes;
    bool m_isFound = false;
    bool m_busy = false;
};

} // namespace duskrow::app
