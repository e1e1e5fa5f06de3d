// SPDX-License-Identifier: MIT
#pragma once

#include <QTest>

#include "domain/protocol/protocol_reader.h"
#include "domain/protocol_files.h"
#include "domain/rules/trap_rule_results.h"
#include "domain/trap_story.h"
#include "golden_csv.h"

// The protocol files as they are shipped, and their rules by id; what is not there ends the test run.
namespace duskrow::domain {

inline Protocol protocolNamed(const char* id)
{
    const auto read = readProtocol(protocolText(id), id);
    if (!read) qFatal("%s: %s %s", id, read.error().args[1].c_str(), read.error().args[2].c_str());
    return *read;
}

template <typename Rule>
const Rule& trapRule(const Protocol& protocol, const char* id)
{
    for (const TrapRule& rule : protocol.trapRules)
        if (headOf(rule).id == id) return std::get<Rule>(rule);
    qFatal("no trap rule %s", id);
}

template <typename Rule>
const Rule& fieldRule(const Protocol& protocol, const char* id)
{
    for (const FieldRule& rule : protocol.fieldRules)
        if (headOf(rule).id == id) return std::get<Rule>(rule);
    qFatal("no field rule %s", id);
}

inline std::vector<CatchStep> stepsOf(const QByteArray& story)
{
    const TrapStory told(story);
    return catchIntervals(told.facts()).steps;
}

inline QByteArray dayText(const std::optional<CatchSpan>& span, bool isEnd)
{
    if (!span) return {};
    return storyText(isEnd ? span->to : span->from);
}

// A row of data for each row of a golden table.
inline void rowsOf(const char* file)
{
    QTest::addColumn<int>("row");
    const auto rows = tests::readGolden(file);
    for (int row = 0; row < rows.size(); ++row) QTest::newRow(qPrintable(QString::number(row + 1))) << row;
}

} // namespace duskrow::domain
