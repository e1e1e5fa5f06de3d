// SPDX-License-Identifier: MIT
#include "publish/readers_language.h"

#include <QCoreApplication>

namespace duskrow::publish {

ReadersLanguage::ReadersLanguage(const std::string& language)
{
    if (language.empty()) return;
    m_locale = language == "fr" ? QLocale(QLocale::French, QLocale::Canada)
                                : QLocale(QLocale::English, QLocale::Canada);
    if (m_translator.load(
            m_locale, QStringLiteral("duskrow"), QStringLiteral("_"), QStringLiteral(":/translations")))
        QCoreApplication::installTranslator(&m_translator);
}

ReadersLanguage::~ReadersLanguage()
{
    QCoreApplication::removeTranslator(&m_translator);
}

} // namespace duskrow::publish
