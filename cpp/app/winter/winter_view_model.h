// SPDX-License-Identifier: MIT
#pragma once

#include "app/row_list.h"
#include "app/view_model.h"
#include "app/winter/winter_book.h"

namespace duskrow::app {

// When the traps are in: thanks to those who kept them, who goes on, and what the next season needs.
class WinterViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isRead READ isRead NOTIFY shown FINAL)
    Q_PROPERTY(int nextYear READ nextYear NOTIFY shown FINAL)
    Q_PROPERTY(QString season READ season NOTIFY shown FINAL) // "Season 2026"; empty without one
    Q_PROPERTY(QString goingOn READ goingOn NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::RowList* cooperators READ cooperators CONSTANT FINAL) // `flags[0]`: yes, no, ""
    Q_PROPERTY(duskrow::app::RowList* orders READ orders CONSTANT FINAL) // `flags` are lines
    Q_PROPERTY(QString folder READ folder WRITE setFolder NOTIFY done FINAL)
    Q_PROPERTY(QString written READ written NOTIFY done FINAL) // what was written where; empty until then
    Q_PROPERTY(bool isWriting READ isWriting NOTIFY done FINAL)
    Q_PROPERTY(QString copied READ copied NOTIFY done FINAL) // whose thanks, or "order", were copied last

public:
    explicit WinterViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] bool isRead() const { return m_book.has_value(); }
    [[nodiscard]] int nextYear() const { return m_book ? m_book->nextYear() : 0; }
    [[nodiscard]] QString season() const;
    [[nodiscard]] QString goingOn() const;
    [[nodiscard]] RowList* cooperators() { return &m_cooperators; }
    [[nodiscard]] RowList* orders() { return &m_orders; }
    [[nodiscard]] QString folder() const { return m_folder; }
    void setFolder(const QString& folder);
    [[nodiscard]] QString written() const { return m_written; }
    [[nodiscard]] bool isWriting() const { return m_isWriting; }
    [[nodiscard]] QString copied() const { return m_copied; }

    // goesOn  "yes", "no", or empty: has not said
    Q_INVOKABLE void say(const QString& member, const QString& goesOn);
    Q_INVOKABLE void writeSheets(); // a PDF each, into the folder
    Q_INVOKABLE void copyThanks(const QString& member); // as a message
    Q_INVOKABLE void copyOrder();
    // For the device's own mail: "mailto:?subject=...&body=..."
    Q_INVOKABLE QString mailAddress(const QString& member) const;

Q_SIGNALS:
    void shown();
    void done();

private:
    void refresh();
    [[nodiscard]] QString programmeName() const;
    [[nodiscard]] text::ThankYouSheet sheetOf(const Cooperator& person) const;
    [[nodiscard]] const Cooperator* find(const QString& member) const;
    void wrote(const QString& folder, const domain::Result<std::int64_t>& number);
    void copy(const QString& what, const QString& words);

    std::optional<WinterBook> m_book;
    RowList m_cooperators;
    RowList m_orders;
    QString m_folder;
    QString m_written;
    QString m_copied;
    bool m_isWriting = false;
    int m_looks = 0;
};

} // namespace duskrow::app
