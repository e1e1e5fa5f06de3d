// SPDX-License-Identifier: MIT
#pragma once

#include "app/view_model.h"

namespace duskrow::app {

// Begins a programme: a name, who I am, and presets that fit most.
class StartViewModel : public ViewModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(QString name MEMBER m_name NOTIFY edited FINAL)
    Q_PROPERTY(QString myName MEMBER m_myName NOTIFY edited FINAL)
    Q_PROPERTY(QString role MEMBER m_role NOTIFY edited FINAL)
    Q_PROPERTY(QString districts MEMBER m_districts NOTIFY edited FINAL)
    Q_PROPERTY(int weekStart MEMBER m_weekStart NOTIFY edited FINAL)
    Q_PROPERTY(int countDay MEMBER m_countDay NOTIFY edited FINAL)
    Q_PROPERTY(QString pest MEMBER m_pest NOTIFY edited FINAL)
    Q_PROPERTY(QStringList pestKeys READ pestKeys CONSTANT FINAL)
    Q_PROPERTY(QStringList pestLabels READ pestLabels CONSTANT FINAL)
    Q_PROPERTY(int year READ year CONSTANT FINAL)
    Q_PROPERTY(QString nameError READ nameError NOTIFY checked FINAL)
    Q_PROPERTY(QString myNameError READ myNameError NOTIFY checked FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged FINAL)

public:
    using ViewModel::ViewModel;

    [[nodiscard]] QStringList pestKeys() const;
    [[nodiscard]] QStringList pestLabels() const;
    [[nodiscard]] int year() const;
    [[nodiscard]] QString nameError() const;
    [[nodiscard]] QString myNameError() const;
    [[nodiscard]] bool busy() const { return m_busy; }

    // Keeps everything in one commit, then emits begun().
    Q_INVOKABLE void begin();

Q_SIGNALS:
    void edited();
    void checked();
    void busyChanged();
    void begun();

private:
    [[nodiscard]] std::vector<domain::Edit> edits(const domain::Uuid& me) const;
    void setBusy(bool busy);

    QString m_name;
    QString m_myName;
    QString m_role = QStringLiteral("grower");
    QString m_districts;
    QString m_pest = QStringLiteral("bertha-armyworm");
    int m_weekStart = 1; // a week that starts on the count day is not crossed by its counts
    int m_countDay = 1;
    bool m_wasChecked = false;
    bool m_busy = false;
};

} // namespace duskrow::app
