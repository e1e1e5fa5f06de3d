// SPDX-License-Identifier: MIT
#include "text/entry_scale.h"

#include <QCoreApplication>

namespace duskrow::text {

namespace {

QString unit(const char* words)
{
    return QCoreApplication::translate("EntryScale", words);
}

bool isOverGround(std::string_view field)
{
    return field == "accuracy_mm" || field.ends_with("distance_mm");
}

} // namespace

EntryScale entryScale(const domain::Field& field)
{
    if (field.unit == "mm" && isOverGround(field.name))
        return {.kept = 1000, .decimals = 1, .step = 1, .unit = unit(QT_TRANSLATE_NOOP("EntryScale", "m"))};
    if (field.unit == "mm")
        return {.kept = 10, .step = 5, .unit = unit(QT_TRANSLATE_NOOP("EntryScale", "cm"))};
    // Five decimals are about a metre.
    if (field.unit == "1e-7 degree")
        return {.kept = 1e7, .decimals = 5, .step = 1e-5, .unit = unit(QT_TRANSLATE_NOOP("EntryScale", "°"))};
    if (field.unit == "h") return {.unit = unit(QT_TRANSLATE_NOOP("EntryScale", "h"))};
    return {};
}

} // namespace duskrow::text
