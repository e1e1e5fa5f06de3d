// SPDX-License-Identifier: MIT
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

#include "domain/protocol/local_text.h"

namespace duskrow::tool {

// A sentence that is marked for "Tool", in the language of the program.
QString said(const char* words);
QString inLanguage(const domain::LocalText& text);

// Writes a line in UTF-8 to what comes out of the program.
void print(const QString& line);
// Writes a line to where errors go.
void printError(const QString& line);
// Whether all that was printed has left the program.
bool isPrinted();

// Columns as wide as their longest cell.
//
// numbers  the columns that stand to the right, by their place
void printTable(
    const QStringList& header, const std::vector<QStringList>& rows, const std::vector<int>& numbers);

} // namespace duskrow::tool
