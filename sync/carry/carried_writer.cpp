// SPDX-License-Identifier: MIT
#include "sync/carry/carried_writer.h"

#include <sodium.h>

#include "store/durable_file.h"
#include "sync/carry/carried_end.h"
#include "sync/segment/layout.h"

namespace duskrow::sync {

using namespace duskrow::domain;

struct CarriedWriter::Writing {
    store::DurableFile file;
    CarriedEnd end;
    crypto_generichash_state hash{};

    Result<Done> append(std::string_view bytes)
    {
        crypto_generichash_update(&hash, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
        return file.append(bytes);
    }
};

CarriedWriter::CarriedWriter(std::unique_ptr<Writing> writing) : m_writing(std::move(writing))
{
}
CarriedWriter::CarriedWriter(CarriedWriter&&) noexcept = default;
CarriedWriter& CarriedWriter::operator=(CarriedWriter&&) noexcept = default;
CarriedWriter::~CarriedWriter() = default;

Result<CarriedWriter> CarriedWriter::open(const std::filesystem::path& path, const Uuid& programme)
{
    auto file = store::DurableFile::open(path, store::Access::Everyone);
    if (!file) return file.error();
    std::unique_ptr<Writing> writing(new Writing{std::move(file.value()), {programme, 0, 0}});
    crypto_generichash_init(&writing->hash, nullptr, 0, hashBytes);
    if (const auto written = writing->append(carriedMagic); !written) return written.error();
    return CarriedWriter(std::move(writing));
}

Result<Done> CarriedWriter::add(ItemKind kind, std::string_view bytes)
{
    if (bytes.size() > mostItemBytes(kind)) return Error{ErrorCode::SegmentTooLarge, {"item"}};
    const auto head = m_writing->append(itemHead(static_cast<char>(kind), bytes.size()));
    if (!head) return head.error();
    if (const auto body = m_writing->append(bytes); !body) return body.error();
    ++(kind == ItemKind::Segment ? m_writing->end.segments : m_writing->end.photographs);
    return Done{};
}

Result<Done> CarriedWriter::finish()
{
    const std::string text = endText(m_writing->end);
    if (const auto end = m_writing->append(itemHead(endLetter, text.size()) + text); !end) return end.error();
    std::string hash(hashBytes, '\0');
    crypto_generichash_final(&m_writing->hash, reinterpret_cast<unsigned char*>(hash.data()), hash.size());
    if (const auto written = m_writing->file.append(hash); !written) return written.error();
    return m_writing->file.finish();
}

} // namespace duskrow::sync
