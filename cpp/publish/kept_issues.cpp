// SPDX-License-Identifier: MIT
#include "publish/kept_issues.h"

#include <QDir>
#include <QFile>
#include <QSaveFile>

#include <algorithm>

#include "formats/bulletin/document.h"

namespace duskrow::publish {

using namespace duskrow::domain;

namespace {

constexpr qint64 mostIssueBytes = 64LL << 20U;

bool comesBefore(const KeptIssue& a, const KeptIssue& b)
{
    return std::tie(a.iso.year, a.iso.week, a.issue) < std::tie(b.iso.year, b.iso.week, b.issue);
}

// Whatever a protocol is called, its name leads nowhere else.
QString fileName(const KeptIssue& issue)
{
    std::string name = formats::weekText(issue.iso) + "-" + issue.pest + "-" + issue.trapType;
    for (char& letter : name)
        if (!std::isalnum(static_cast<unsigned char>(letter)) && letter != '-') letter = '_';
    return QStringLiteral("%1-%2.json").arg(QString::fromStdString(name)).arg(issue.issue);
}

} // namespace

Result<std::string> readWhole(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() > mostIssueBytes)
        return Error{ErrorCode::FileUnreadable, {path.toStdString()}};
    return file.readAll().toStdString();
}

Result<Done> replaceFile(const QString& path, const std::string& bytes)
{
    QSaveFile file(path);
    const auto size = static_cast<qint64>(bytes.size());
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes.data(), size) != size || !file.commit())
        return Error{ErrorCode::FileUnwritable, {path.toStdString()}};
    return Done{};
}

Result<KeptIssues> KeptIssues::read(
    const QString& folder, const std::string& pest, const std::string& trapType)
{
    KeptIssues kept;
    kept.m_folder = folder;
    const QDir dir(folder);
    for (const QString& name : dir.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        const auto text = readWhole(dir.filePath(name));
        if (!text) return text.error();
        auto issue = readKeptIssue(*text);
        // Going on without it would publish its week anew.
        if (!issue) return Error{ErrorCode::FileUnreadable, {dir.filePath(name).toStdString()}};
        if (issue->pest == pest && issue->trapType == trapType) kept.m_issues.push_back(std::move(*issue));
    }
    std::sort(kept.m_issues.begin(), kept.m_issues.end(), comesBefore);
    return kept;
}

const KeptIssue* KeptIssues::last(IsoWeek week) const
{
    const auto found = std::find_if(
        m_issues.rbegin(), m_issues.rend(), [week](const KeptIssue& issue) { return issue.iso == week; });
    return found == m_issues.rend() ? nullptr : &*found;
}

const KeptIssue* KeptIssues::first(IsoWeek week) const
{
    const auto found = std::find_if(
        m_issues.begin(), m_issues.end(), [week](const KeptIssue& issue) { return issue.iso == week; });
    return found == m_issues.end() ? nullptr : &*found;
}

Result<Done> KeptIssues::keep(KeptIssue issue)
{
    const QDir dir(m_folder);
    if (!dir.mkpath(QStringLiteral("."))) return Error{ErrorCode::FileUnwritable, {m_folder.toStdString()}};
    auto written = replaceFile(dir.filePath(fileName(issue)), keptIssueText(issue));
    if (!written) return written;
    m_issues.push_back(std::move(issue));
    std::sort(m_issues.begin(), m_issues.end(), comesBefore);
    return Done{};
}

} // namespace duskrow::publish
