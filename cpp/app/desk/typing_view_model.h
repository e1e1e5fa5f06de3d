// SPDX-License-Identifier: MIT
#pragma once

#include "app/desk/desk_book.h"
#include "app/desk/typing_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// Counts that were phoned, texted, told or written down: one row for each trap that has not reported for a
// week. Each row is kept by itself, as an ordinary visit; what is half typed lies in a draft.
class TypingViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isRead READ isRead NOTIFY shown FINAL)
    Q_PROPERTY(QString weekLine READ weekLine NOTIFY shown FINAL)
    Q_PROPERTY(QString typist READ typist CONSTANT FINAL)
    Q_PROPERTY(QString day READ day WRITE setDay NOTIFY howChanged FINAL)
    Q_PROPERTY(QString today READ today CONSTANT FINAL)
    Q_PROPERTY(QString dayError READ dayError NOTIFY howChanged FINAL)
    Q_PROPERTY(QString how READ how WRITE setHow NOTIFY howChanged FINAL)
    Q_PROPERTY(QStringList howKeys READ howKeys CONSTANT FINAL)
    Q_PROPERTY(QStringList howLabels READ howLabels CONSTANT FINAL)
    Q_PROPERTY(QString emptied READ emptied WRITE setEmptied NOTIFY howChanged FINAL) // yes, no, unsaid
    Q_PROPERTY(QStringList reasonKeys READ reasonKeys CONSTANT FINAL) // why there is no count
    Q_PROPERTY(QStringList reasonLabels READ reasonLabels CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::TypingList* rows READ rows CONSTANT FINAL)
    Q_PROPERTY(int kept READ kept NOTIFY keptChanged FINAL) // rows that are on disk now

public:
    // week  its first day; any day of it will do. Empty: the week that a desk opens on
    TypingViewModel(Session& session, const QString& week, QObject* parent = nullptr);

    [[nodiscard]] bool isRead() const { return m_isRead; }
    [[nodiscard]] QString weekLine() const;
    [[nodiscard]] QString typist() const;
    [[nodiscard]] QString day() const;
    void setDay(const QString& day);
    [[nodiscard]] QString today() const;
    [[nodiscard]] QString dayError() const;
    [[nodiscard]] QString how() const;
    void setHow(const QString& how);
    [[nodiscard]] static QStringList howKeys();
    [[nodiscard]] static QStringList howLabels();
    [[nodiscard]] QString emptied() const;
    void setEmptied(const QString& emptied);
    [[nodiscard]] static QStringList reasonKeys();
    [[nodiscard]] static QStringList reasonLabels();
    [[nodiscard]] TypingList* rows() { return &m_rows; }
    [[nodiscard]] int kept() const { return m_kept; }

    Q_INVOKABLE void typeCount(int row, const QString& typed);
    Q_INVOKABLE void typeWho(int row, const QString& typed);
    // Keeps what a row says; false when it cannot be kept, and the row says why.
    Q_INVOKABLE bool keep(int row);
    // Keeps that the trap of a row could not be counted, whatever was typed; false likewise.
    Q_INVOKABLE bool keepNoCount(int row, const QString& reason);

Q_SIGNALS:
    void shown();
    void howChanged();
    void keptChanged();

private:
    void take(const DeskBook& book);
    [[nodiscard]] TypingRow rowOf(const DeskBook& book, std::size_t trap, domain::LocalDay countDay);
    [[nodiscard]] QString draftKey(const TypingRow& row) const;
    void touched(int row);
    void saveHow();
    void refuse(int row, const QString& sentence);
    [[nodiscard]] bool isReady(int row);
    bool keepVisit(int row, const domain::Visit& visit, const QString& said);
    void answer(const domain::Uuid& trap, const domain::Result<store::Kept>& kept, const QString& said);

    std::optional<domain::LocalDay> m_wanted; // a day of the week asked for
    domain::ReportingWeek m_week;
    domain::SeasonWeek m_rhythm;
    TypingHow m_how;
    TypingList m_rows;
    bool m_isRead = false;
    int m_kept = 0;
};

} // namespace duskrow::app
