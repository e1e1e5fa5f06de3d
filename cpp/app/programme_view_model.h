// SPDX-License-Identifier: MIT
#pragma once

#include "app/view_model.h"

namespace duskrow::app {

// Corrects what was said when the programme was begun. Each thing changed is a correction: what stood there
// before stays in the history.
class ProgrammeViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString name MEMBER m_name NOTIFY edited FINAL)
    Q_PROPERTY(QString nameError READ nameError NOTIFY edited FINAL)
    Q_PROPERTY(QString myName MEMBER m_myName NOTIFY edited FINAL)
    Q_PROPERTY(QString myNameError READ myNameError NOTIFY edited FINAL)
    Q_PROPERTY(QString role MEMBER m_role NOTIFY edited FINAL)
    Q_PROPERTY(bool hasSeason READ hasSeason CONSTANT FINAL)
    Q_PROPERTY(int weekStart MEMBER m_weekStart NOTIFY edited FINAL) // ISO: 1 Monday to 7 Sunday
    Q_PROPERTY(int countDay MEMBER m_countDay NOTIFY edited FINAL)
    Q_PROPERTY(int graceDays MEMBER m_graceDays NOTIFY edited FINAL)
    Q_PROPERTY(int reportDay MEMBER m_reportDay NOTIFY edited FINAL)
    Q_PROPERTY(int reportMinute MEMBER m_reportMinute NOTIFY edited FINAL) // of the day
    Q_PROPERTY(QStringList districts READ districts NOTIFY districtsChanged FINAL)
    Q_PROPERTY(QStringList pestKeys READ pestKeys CONSTANT FINAL)
    Q_PROPERTY(QStringList pestLabels READ pestLabels CONSTANT FINAL)
    Q_PROPERTY(QStringList pests READ pests NOTIFY pestsChanged FINAL) // of the season
    Q_PROPERTY(QStringList keptPests READ keptPests CONSTANT FINAL) // these stay
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    explicit ProgrammeViewModel(Session& session, QObject* parent = nullptr);

    [[nodiscard]] QString nameError() const;
    [[nodiscard]] QString myNameError() const;
    [[nodiscard]] bool hasSeason() const { return session().season().has_value(); }
    [[nodiscard]] QStringList districts() const { return m_districts; }
    [[nodiscard]] QStringList pestKeys() const;
    [[nodiscard]] QStringList pestLabels() const;
    [[nodiscard]] QStringList pests() const { return m_pests; }
    [[nodiscard]] QStringList keptPests() const { return m_pests.mid(0, m_keptPests); }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void setDistrict(int at, const QString& name); // emptied: withdrawn
    Q_INVOKABLE void addDistrict();
    Q_INVOKABLE void togglePest(const QString& pest); // one that is kept already stays
    Q_INVOKABLE QString timeOfDay(int minute) const;

    // Keeps every change in one commit, then emits kept(); at once when nothing was changed.
    Q_INVOKABLE void keep();

Q_SIGNALS:
    void edited();
    void districtsChanged();
    void pestsChanged();
    void busyChanged();
    void kept();

private:
    [[nodiscard]] std::vector<domain::Edit> edits() const;
    void addDistrictEdits(std::vector<domain::Edit>& all) const;
    void addPestEdits(std::vector<domain::Edit>& all) const;

    QString m_name;
    QString m_myName;
    QString m_role;
    int m_weekStart = 1;
    int m_countDay = 1;
    int m_graceDays = 0;
    int m_reportDay = 0;
    int m_reportMinute = 0;
    std::vector<domain::District> m_keptDistricts;
    QStringList m_districts; // those kept first, then new ones
    QStringList m_pests; // those kept first, then new ones
    qsizetype m_keptPests = 0;
    bool m_busy = false;
};

} // namespace duskrow::app
