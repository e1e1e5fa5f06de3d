// SPDX-License-Identifier: MIT
#pragma once

#include "app/row_list.h"
#include "app/view_model.h"

namespace duskrow::app {

// Who takes part: members with their roles, devices and fields, and who was invited and is not here yet.
class MembersViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(duskrow::app::RowList* members READ members CONSTANT FINAL)
    Q_PROPERTY(duskrow::app::RowList* invited READ invited CONSTANT FINAL)
    Q_PROPERTY(bool isCoordinator READ isCoordinator NOTIFY shown FINAL)
    Q_PROPERTY(bool needsSecondRoot READ needsSecondRoot NOTIFY shown FINAL) // one lost device ends all

public:
    explicit MembersViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] RowList* members() { return &m_members; }
    [[nodiscard]] RowList* invited() { return &m_invited; }
    [[nodiscard]] bool isCoordinator() const { return m_isCoordinator; }
    [[nodiscard]] bool needsSecondRoot() const { return m_needsSecondRoot; }

    // Nobody can enter with this invitation any more.
    Q_INVOKABLE void takeBack(const QString& invitation);

Q_SIGNALS:
    void shown();

private:
    struct State;
    void refresh();

    RowList m_members;
    RowList m_invited;
    bool m_isCoordinator = false;
    bool m_needsSecondRoot = false;
};

} // namespace duskrow::app
