// SPDX-License-Identifier: MIT
#pragma once

#include <QLocale>
#include <QTranslator>

#include <string>

namespace duskrow::publish {

// For as long as it lives, sentences are those of the readers' language. On the thread of the screens, and
// not across a return to its event loop.
class ReadersLanguage {
public:
    // language  "en", "fr", or empty for the one that the program speaks
    explicit ReadersLanguage(const std::string& language);
    ~ReadersLanguage();
    ReadersLanguage(const ReadersLanguage&) = delete;
    ReadersLanguage& operator=(const ReadersLanguage&) = delete;

    [[nodiscard]] const QLocale& locale() const { return m_locale; }

private:
    QLocale m_locale;
    QTranslator m_translator;
};

} // namespace duskrow::publish
