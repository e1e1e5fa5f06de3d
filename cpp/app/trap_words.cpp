// SPDX-License-Identifier: MIT
#include "app/trap_words.h"

#include <QCoreApplication>

#include "app/session.h"
#include "domain/protocol/file_value.h"
#include "store/queries.h"

namespace duskrow::app {

using namespace duskrow::domain;

QString tagWords(const Trap& trap)
{
    if (trap.tag.empty()) return QCoreApplication::translate("Trap", "trap without a tag");
    return QString::fromStdString(trap.tag);
}

QString trapTitle(const Site& site, const Trap& trap)
{
    if (site.name.empty()) return tagWords(trap);
    return QStringLiteral("%1 · %2").arg(QString::fromStdString(site.name), tagWords(trap));
}

QString trapShape(const Protocol* protocol, std::string_view trapType)
{
    const TrapType* type = protocol ? protocol->trapType(trapType) : nullptr;
    const TrapShape shape = type ? type->shape : TrapShape::Bucket;
    return QString::fromLatin1(choiceWords<TrapShape>[static_cast<std::size_t>(shape)]);
}

text::Animal animalOf(const Protocol* protocol)
{
    return text::animalOf(protocol, Session::language());
}

text::Animal animalOf(Session& session, const std::string& pest)
{
    return animalOf(session.protocol(pest));
}

Animals animalsOf(Session& session)
{
    Animals animals;
    const auto uses = session.season() ? store::protocolsInUse(session.reader(), session.season()->id)
                                       : Result<std::vector<ProtocolUse>>(std::vector<ProtocolUse>());
    if (!uses) return animals; // whoever reads the records next tells it
    for (const ProtocolUse& use : *uses) animals[use.pest] = animalOf(session, use.pest);
    return animals;
}

} // namespace duskrow::app
