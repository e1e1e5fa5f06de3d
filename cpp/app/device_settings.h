// SPDX-License-Identifier: MIT
#pragma once

#include <QObject>
#include <QSettings>
#include <QtQml/qqmlregistration.h>

namespace duskrow::app {

// Reading how a lure is handled is wanted once a day, whichever screen meets it first.
inline const QString lureHandlingRead = QStringLiteral("lure_handling");

// How this device shows the app and where it finds its position. Never part of a programme.
class DeviceSettings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by App")
    Q_PROPERTY(Light light READ light WRITE setLight NOTIFY changed FINAL)
    Q_PROPERTY(bool dark READ dark NOTIFY changed FINAL)
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY changed FINAL)
    Q_PROPERTY(QString positionLog READ positionLog WRITE setPositionLog NOTIFY changed FINAL)

public:
    enum class Light { AsDevice, Day, Night };
    Q_ENUM(Light)

    // file  where the settings lie; empty for the user's own place
    explicit DeviceSettings(const QString& file, QObject* parent = nullptr);

    [[nodiscard]] Light light() const;
    void setLight(Light light);
    [[nodiscard]] bool dark() const; // what `light` comes to now
    [[nodiscard]] double textScale() const; // 1.0 to 2.0
    void setTextScale(double scale);
    [[nodiscard]] QString positionLog() const; // an NMEA log in place of the receiver; empty for none
    void setPositionLog(const QString& path);

    // Whether something wanted once a day was already done on that day; marks it as done.
    bool firstTimeOn(const QString& what, QDate day);
    [[nodiscard]] bool wasDoneOn(const QString& what, QDate day) const;

    // Which store is opened in the stead of another: of a programme that was joined. Empty for none.
    [[nodiscard]] QString storeInsteadOf(const QString& path) const;
    void setStoreInsteadOf(const QString& path, const QString& joined);

Q_SIGNALS:
    void changed();

private:
    mutable QSettings m_settings;
};

} // namespace duskrow::app
