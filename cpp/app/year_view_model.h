// SPDX-License-Identifier: MIT
#pragma once

#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// The season as a whole: its programme, week, protocols and people, its calendar, and the year after it.
class YearViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(
        int year READ year NOTIFY shown FINAL) // of the season, or of the clock where there is none yet
    Q_PROPERTY(bool hasSeason READ hasSeason NOTIFY shown FINAL)
    Q_PROPERTY(QString programme READ programme NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::RowList* facts READ facts CONSTANT FINAL) // of the week and the districts
    Q_PROPERTY(duskrow::app::RowList* protocols READ protocols CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* people READ people CONSTANT FINAL)
    Q_PROPERTY(int yearToBegin READ yearToBegin NOTIFY shown FINAL) // 0 while it is too early
    Q_PROPERTY(QString begunLine READ begunLine NOTIFY shown FINAL) // a year that is begun already

public:
    explicit YearViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] int year() const;
    [[nodiscard]] bool hasSeason() const { return session().season().has_value(); }
    [[nodiscard]] QString programme() const;
    [[nodiscard]] RowList* facts() { return &m_facts; }
    [[nodiscard]] RowList* protocols() { return &m_protocols; }
    [[nodiscard]] RowList* people() { return &m_people; }
    [[nodiscard]] int yearToBegin() const { return m_yearToBegin; }
    [[nodiscard]] QString begunLine() const { return m_begunLine; }

    // Begins `yearToBegin` with the same people, week and protocols.
    Q_INVOKABLE void rollOver();

Q_SIGNALS:
    void shown();

private:
    void show();
    void showFacts();
    void showProtocols();
    void showPeople();
    void showNextYear();

    RowList m_facts;
    RowList m_protocols;
    RowList m_people;
    int m_yearToBegin = 0;
    QString m_begunLine;
};

} // namespace duskrow::app
