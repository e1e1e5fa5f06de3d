// SPDX-License-Identifier: MIT
#include "app/device_settings.h"

#include <QDate>
#include <QGuiApplication>
#include <QPalette>

#include <algorithm>

namespace duskrow::app {

namespace {
const auto lightKey = QStringLiteral("look/light");
const auto scaleKey = QStringLiteral("look/text_scale");
const auto logKey = QStringLiteral("position/log");
} // namespace

DeviceSettings::DeviceSettings(const QString& file, QObject* parent)
    : QObject(parent), m_settings(file.isEmpty() ? QSettings().fileName() : file,
                           file.isEmpty() ? QSettings::NativeFormat : QSettings::IniFormat)
{
}

DeviceSettings::Light DeviceSettings::light() const
{
    const int held = m_settings.value(lightKey, 0).toInt();
    return held >= 0 && held <= 2 ? static_cast<Light>(held) : Light::AsDevice;
}

void DeviceSettings::setLight(Light light)
{
    m_settings.setValue(lightKey, static_cast<int>(light));
    Q_EMIT changed();
}

bool DeviceSettings::dark() const
{
    switch (light()) {
    case Light::Day:
        return false;
    case Light::Night:
        return true;
    case Light::AsDevice:
        break;
    }
    // Qt 6.4 does not tell the device's colour scheme; a window darker than its words is a dark one.
    const QPalette palette = QGuiApplication::palette();
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

double DeviceSettings::textScale() const
{
    return std::clamp(m_settings.value(scaleKey, 1.0).toDouble(), 1.0, 2.0);
}

void DeviceSettings::setTextScale(double scale)
{
    m_settings.setValue(scaleKey, std::clamp(scale, 1.0, 2.0));
    Q_EMIT changed();
}

QString DeviceSettings::positionLog() const
{
    return m_settings.value(logKey).toString();
}

void DeviceSettings::setPositionLog(const QString& path)
{
    m_settings.setValue(logKey, path);
    Q_EMIT changed();
}

bool DeviceSettings::wasDoneOn(const QString& what, QDate day) const
{
    return m_settings.value(QStringLiteral("daily/") + what).toDate() == day;
}

bool DeviceSettings::firstTimeOn(const QString& what, QDate day)
{
    if (wasDoneOn(what, day)) return false;
    m_settings.setValue(QStringLiteral("daily/") + what, day);
    return true;
}

namespace {

// A path holds what a settings key may not.
QString insteadKey(const QString& path)
{
    return QStringLiteral("instead/") + QString::fromLatin1(path.toUtf8().toHex());
}

} // namespace

QString DeviceSettings::storeInsteadOf(const QString& path) const
{
    return m_settings.value(insteadKey(path)).toString();
}

void DeviceSettings::setStoreInsteadOf(const QString& path, const QString& joined)
{
    m_settings.setValue(insteadKey(path), joined);
    m_settings.sync();
}

} // namespace duskrow::app
