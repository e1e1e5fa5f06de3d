// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <vector>

#include "domain/bulletin/kept_issue.h"

namespace duskrow::publish {

// The issues that a desk has published of one pest and trap type: a folder of its own, beside the store
// unless another is named. It is never published.
class KeptIssues {
public:
    // Errors  FileUnreadable {path} for a file of ours that is not whole
    static domain::Result<KeptIssues> read(
        const QString& folder, const std::string& pest, const std::string& trapType);

    // The last issue of a week, and the first one; null where it was never published.
    [[nodiscard]] const domain::KeptIssue* last(domain::IsoWeek week) const;
    [[nodiscard]] const domain::KeptIssue* first(domain::IsoWeek week) const;
    [[nodiscard]] const std::vector<domain::KeptIssue>& all() const { return m_issues; } // by week and issue

    // Errors  FileUnwritable {path}
    domain::Result<domain::Done> keep(domain::KeptIssue issue);

private:
    QString m_folder;
    std::vector<domain::KeptIssue> m_issues;
};

// Writes a file whole or not at all, in the stead of one of that name.
//
// Errors  FileUnwritable {path}
domain::Result<domain::Done> replaceFile(const QString& path, const std::string& bytes);

// Errors  FileUnreadable {path}
domain::Result<std::string> readWhole(const QString& path);

} // namespace duskrow::publish
