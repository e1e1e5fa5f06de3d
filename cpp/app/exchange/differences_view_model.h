// SPDX-License-Identifier: MIT
#pragma once

#include "app/exchange/difference_list.h"
#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// What a coordinator has to decide: values on which people differ, proposals to records that stand, words
// that are out of date, and what was kept aside.
class DifferencesViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(bool isRead READ isRead NOTIFY shown FINAL)
    Q_PROPERTY(bool isCoordinator READ isCoordinator NOTIFY shown FINAL)
    Q_PROPERTY(duskrow::app::DifferenceList* differences READ differences CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* proposals READ proposals CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* stale READ stale CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* aside READ aside CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* refused READ refused CONSTANT FINAL)
    Q_PROPERTY(bool isEmpty READ isEmpty NOTIFY shown FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    explicit DifferencesViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] bool isRead() const { return m_isRead; }
    [[nodiscard]] bool isCoordinator() const { return m_isCoordinator; }
    [[nodiscard]] DifferenceList* differences() { return &m_differences; }
    [[nodiscard]] RowList* proposals() { return &m_proposals; }
    [[nodiscard]] RowList* stale() { return &m_stale; }
    [[nodiscard]] RowList* aside() { return &m_aside; }
    [[nodiscard]] RowList* refused() { return &m_refused; }
    [[nodiscard]] bool isEmpty() const;
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void settle(); // all differences that are decided
    Q_INVOKABLE void take(const QString& proposal); // a reference; the record stands with it
    Q_INVOKABLE void leave(const QString& record); // all proposals to it so far: it stands as it was
    Q_INVOKABLE void standAnew(const QString& record); // as it is now
    Q_INVOKABLE void letIn(const QString& change); // a reference

Q_SIGNALS:
    void shown();
    void busyChanged();

private:
    struct State;
    void refresh();
    void keep(std::vector<domain::Edit> edits);

    DifferenceList m_differences;
    RowList m_proposals;
    RowList m_stale;
    RowList m_aside;
    RowList m_refused;
    bool m_isRead = false;
    bool m_isCoordinator = false;
    bool m_busy = false;
};

} // namespace duskrow::app
