// SPDX-License-Identifier: MIT
#include "app/round/round_back_by.h"

#include <algorithm>

#include "domain/rules/typed_time.h"
#include "text/amounts.h"
#include "text/error_text.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

constexpr int lastMinute = 24 * 60 - 1;
constexpr int stride = 30;
constexpr int aheadAtFirst = 120; // an hour or two of work, until the person says better

// What a telephone number is made of when it is dialled; letters and blanks would break the address.
QString dialled(const QString& phone)
{
    QString digits;
    for (const QChar c : phone)
        if (c.isDigit() || (c == QLatin1Char('+') && digits.isEmpty())) digits += c;
    return digits;
}

} // namespace

RoundBackBy::RoundBackBy(const Clock& clock, RoundDraft& draft, QObject* parent)
    : QObject(parent), m_clock(clock), m_draft(draft)
{
    readDraft();
}

int RoundBackBy::minuteNow() const
{
    const Moment now = m_clock.now();
    const auto local = now.at + now.offset;
    const auto sinceMidnight = local - std::chrono::floor<std::chrono::days>(local);
    return static_cast<int>(std::chrono::floor<std::chrono::minutes>(sinceMidnight).count());
}

int RoundBackBy::minute() const
{
    if (m_draft.backBy) return *m_draft.backBy;
    const int ahead = minuteNow() + aheadAtFirst;
    return std::min((ahead + stride - 1) / stride * stride, lastMinute);
}

void RoundBackBy::readDraft()
{
    m_time = text::timeOfDay(minute());
    m_isUnderstood = true;
    Q_EMIT changed();
}

void RoundBackBy::setTime(const QString& typed)
{
    if (typed == m_time) return;
    m_time = typed;
    const auto time = parseTimeOfDay(typed.toStdString());
    m_isUnderstood = time.has_value();
    if (time) m_draft.backBy = static_cast<int>(time->count());
    Q_EMIT changed();
    if (time) Q_EMIT edited();
}

QString RoundBackBy::error() const
{
    if (m_isUnderstood) return {};
    return text::sentence(Error{ErrorCode::NotATime, {m_time.toStdString()}});
}

void RoundBackBy::setPhone(const QString& phone)
{
    if (phone == m_draft.phone) return;
    m_draft.phone = phone;
    Q_EMIT changed();
    Q_EMIT edited();
}

void RoundBackBy::shift(int minutes)
{
    m_draft.backBy = std::clamp(minute() + minutes, 0, lastMinute);
    readDraft();
    Q_EMIT edited();
}

void RoundBackBy::setRound(const text::BackBy& round)
{
    m_round = round;
    Q_EMIT changed();
}

QString RoundBackBy::message() const
{
    if (!m_isUnderstood) return {};
    text::BackBy message = m_round;
    message.time = std::chrono::minutes{minute()};
    return text::backByMessage(message);
}

QString RoundBackBy::remark() const
{
    if (!m_isUnderstood || minute() > minuteNow()) return {};
    return tr("That time has gone by today.");
}

// Source  RFC 5724, where the number may not be left out; phones take it without one and ask for whom.
QUrl RoundBackBy::url() const
{
    if (message().isEmpty()) return {};
    const QByteArray encoded =
        "sms:" + dialled(m_draft.phone).toLatin1() + "?body=" + QUrl::toPercentEncoding(message());
    return QUrl::fromEncoded(encoded);
}

} // namespace duskrow::app
