// SPDX-License-Identifier: MIT
#include "app/visit/moth_guide.h"

#include <algorithm>

#include "app/session.h"

namespace duskrow::app {

using namespace duskrow::domain;

namespace {

// Kinds that qml/parts/MothPicture.qml can draw, and the marks its numbers point at, in their order.
struct Drawn {
    const char* kind;
    std::vector<std::string_view> marks;
};

const std::vector<Drawn>& drawn()
{
    static const std::vector<Drawn> all{
        {"bertha-armyworm", {"kidney-spot", "wavy-line", "colour"}},
        {"clover-cutworm", {"plain-grey"}},
        {"true-armyworm", {"white-dot"}},
    };
    return all;
}

const Drawn* drawnOf(const std::string& kind)
{
    const auto found =
        std::find_if(drawn().begin(), drawn().end(), [&](const Drawn& one) { return one.kind == kind; });
    return found == drawn().end() ? nullptr : &*found;
}

QString wordsOf(const Statement& statement)
{
    return QString::fromStdString(statement.text.in(Session::language()));
}

// First what the picture points at, then the rest.
QStringList marksOf(const std::string& kind, const std::vector<Statement>& statements)
{
    QStringList marks;
    const Drawn* picture = drawnOf(kind);
    const auto isPointedAt = [&](const Statement& statement) {
        return picture
            && std::find(picture->marks.begin(), picture->marks.end(), statement.id) != picture->marks.end();
    };
    for (std::size_t i = 0; picture && i < picture->marks.size(); ++i)
        for (const Statement& statement : statements)
            if (statement.id == picture->marks[i]) marks.append(wordsOf(statement));
    for (const Statement& statement : statements)
        if (!isPointedAt(statement)) marks.append(wordsOf(statement));
    return marks;
}

} // namespace

MothGuide::MothGuide(const Protocol* protocol, QObject* parent)
    : QAbstractListModel(parent), m_animal(text::animalOf(protocol, Session::language()))
{
    if (!protocol) return;
    const std::string language = Session::language();
    m_moths.push_back(
        {QString::fromStdString(protocol->id), QString::fromStdString(protocol->name.in(language)),
            QString::fromStdString(protocol->latin), true, marksOf(protocol->id, protocol->marks.moth), {}});
    for (const LookAlike& other : protocol->lookAlikes) {
        if (other.marks.moth.empty()) continue; // looks alike as a larva only
        m_moths.push_back({QString::fromStdString(other.id), QString::fromStdString(other.name.in(language)),
            QString::fromStdString(other.latin), false, marksOf(other.id, other.marks.moth),
            other.remark ? wordsOf(*other.remark) : QString()});
    }
}

bool MothGuide::hasMarks() const
{
    return std::any_of(
        m_moths.begin(), m_moths.end(), [](const Moth& moth) { return !moth.marks.isEmpty(); });
}

int MothGuide::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_moths.size());
}

QVariant MothGuide::data(const QModelIndex& index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount()) return {};
    const Moth& moth = m_moths[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Kind:
        return moth.kind;
    case Name:
        return moth.name;
    case Latin:
        return moth.latin;
    case IsPest:
        return moth.isPest;
    case Picture:
        return drawnOf(moth.kind.toStdString()) != nullptr;
    case Marks:
        return moth.marks;
    case Remark:
        return moth.remark;
    default:
        return {};
    }
}

QHash<int, QByteArray> MothGuide::roleNames() const
{
    return {{Kind, "kind"}, {Name, "name"}, {Latin, "latin"}, {IsPest, "isPest"}, {Picture, "hasPicture"},
        {Marks, "marks"}, {Remark, "remark"}};
}

} // namespace duskrow::app
