// SPDX-License-Identifier: MIT
#include "app/print/sheet_view_model.h"

#include <QClipboard>
#include <QDir>
#include <QGuiApplication>
#include <QStandardPaths>
#include <QUrl>

#include "app/print/walk_sheet_printer.h"

namespace duskrow::app {

using namespace duskrow::domain;

SheetViewModel::SheetViewModel(Session& session, const QString& walk, QObject* parent)
    : ViewModel(session, parent), m_walk(parseUuid(walk.toStdString()).value_or(Uuid{})),
      m_folder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
{
    connect(&session, &Session::changed, this, &SheetViewModel::refresh);
    refresh();
}

void SheetViewModel::refresh()
{
    auto paper = walkPaper(session(), m_walk);
    if (paper) {
        m_paper = std::move(*paper);
        clearTrouble();
    } else {
        tell(paper.error());
    }
    show();
    Q_EMIT refreshed();
}

void SheetViewModel::show()
{
    if (!m_paper) return;
    std::vector<Row> facts;
    for (const text::SheetFact& fact : m_paper->sheet.facts)
        facts.push_back({.title = fact.name, .detail = fact.value});
    m_facts.show(std::move(facts));
    std::vector<Row> blocks;
    for (const text::SheetBlock& block : m_paper->sheet.blocks) {
        Row row{.title = block.heading, .flags = text::linesOf(block)};
        if (!row.flags.isEmpty()) blocks.push_back(std::move(row));
    }
    m_blocks.show(std::move(blocks));
}

QString SheetViewModel::title() const
{
    return m_paper ? m_paper->sheet.title : QString();
}

QString SheetViewModel::programmeLine() const
{
    if (!m_paper) return {};
    const text::WalkSheet& sheet = m_paper->sheet;
    return sheet.invented.isEmpty() ? sheet.programme : tr("%1 · %2").arg(sheet.programme, sheet.invented);
}

QString SheetViewModel::verdict() const
{
    return m_paper ? m_paper->sheet.verdict : QString();
}

QString SheetViewModel::verdictKey() const
{
    if (!m_paper || !m_paper->sheet.verdictSign) return {};
    switch (*m_paper->sheet.verdictSign) {
    case ControlVerdict::Below:
        return QStringLiteral("below");
    case ControlVerdict::Above:
        return QStringLiteral("above");
    case ControlVerdict::TooCloseToCall:
        return QStringLiteral("too_close");
    }
    return {};
}

QString SheetViewModel::mean() const
{
    return m_paper ? m_paper->sheet.mean : QString();
}

QString SheetViewModel::range() const
{
    return m_paper ? m_paper->sheet.range : QString();
}

QString SheetViewModel::next() const
{
    return m_paper ? m_paper->sheet.next : QString();
}

QString SheetViewModel::text() const
{
    return m_paper ? text::asText(m_paper->sheet) : QString();
}

QString SheetViewModel::fileName() const
{
    return m_paper ? m_paper->fileName : QString();
}

void SheetViewModel::setFolder(const QString& folder)
{
    if (folder == m_folder) return;
    m_folder = folder;
    m_written.clear();
    clearTrouble();
    Q_EMIT folderChanged();
    Q_EMIT writtenChanged();
}

void SheetViewModel::write()
{
    if (!m_paper) return;
    m_written.clear();
    m_isCopied = false;
    const QString folder = m_folder.trimmed();
    if (folder.isEmpty()) {
        tell(Error{ErrorCode::Empty, {"folder"}});
    } else {
        const QString path = QDir(folder).filePath(fileName());
        if (const auto pages = printSheet(*m_paper, path); pages) {
            clearTrouble();
            m_written = tr("The sheet is in %1.").arg(QDir::toNativeSeparators(path));
        } else {
            tell(pages.error());
        }
    }
    Q_EMIT writtenChanged();
}

void SheetViewModel::copy()
{
    if (!m_paper) return;
    QGuiApplication::clipboard()->setText(text());
    m_isCopied = true;
    Q_EMIT writtenChanged();
}

QString SheetViewModel::address(const QString& scheme) const
{
    const auto encoded = [](const QString& words) {
        return QString::fromLatin1(QUrl::toPercentEncoding(words));
    };
    if (scheme == QLatin1String("sms")) return QStringLiteral("sms:?body=%1").arg(encoded(text()));
    return QStringLiteral("mailto:?subject=%1&body=%2").arg(encoded(title()), encoded(text()));
}

} // namespace duskrow::app
