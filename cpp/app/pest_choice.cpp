// SPDX-License-Identifier: MIT
#include "app/pest_choice.h"

#include "protocols/protocol_files.h"

namespace duskrow::app {

PestChoice pestsToChoose(Session& session)
{
    PestChoice choice;
    for (const QString& pest : protocols::carriedProtocols()) {
        const domain::Protocol* protocol = session.protocol(pest.toStdString());
        if (!protocol) continue;
        choice.keys << pest;
        choice.labels << QString::fromStdString(protocol->name.in(Session::language()));
    }
    return choice;
}

} // namespace duskrow::app
