// SPDX-License-Identifier: MIT
#include "text/animal.h"

#include <QCoreApplication>

#include "text/amounts.h"

namespace duskrow::text {

using namespace duskrow::domain;

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Animal)
};

} // namespace

Animal::Animal(const CountedWord& word, const std::string& language)
    : m_one(QString::fromStdString(word.one.in(language))),
      m_many(QString::fromStdString(word.many.in(language))), m_noneIsOne(language.starts_with("fr"))
{
}

QString Animal::one() const
{
    return isMoth() ? Words::tr("moth") : m_one;
}

QString Animal::many() const
{
    return isMoth() ? Words::tr("moths") : m_many;
}

QString Animal::after(std::int64_t count) const
{
    return count == 1 || (count == 0 && m_noneIsOne) ? one() : many();
}

QString Animal::amount(Moths count, const QLocale& locale) const
{
    if (isMoth()) return moths(count, locale);
    return QStringLiteral("%1 %2").arg(number(count.value(), locale), after(count.value()));
}

Animal animalOf(const Protocol* protocol, const std::string& language)
{
    return protocol && protocol->counted ? Animal(*protocol->counted, language) : Animal();
}

} // namespace duskrow::text
