// SPDX-License-Identifier: MIT
#include "app/print/print_command.h"

#include "app/print/walk_sheet_printer.h"

namespace duskrow::app {

using namespace duskrow::domain;

Result<Done> printWalk(const PrintOrder& order)
{
    place::PositionSource position; // asked for nothing
    const auto session = Session::open(order.storePath,
        {.keyFolder = order.keyFolder.toStdString(), .mayCreate = false}, order.clock, position);
    if (!session) return session.error();
    const auto walk = walkCalled(**session, order.walk);
    if (!walk) return walk.error();
    const auto paper = walkPaper(**session, *walk);
    if (!paper) return paper.error();
    const auto pages = printSheet(*paper, order.path);
    if (!pages) return pages.error();
    return Done{};
}

} // namespace duskrow::app
