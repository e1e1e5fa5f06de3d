// SPDX-License-Identifier: MIT
#include "sync/hub/http_budget.h"

#include <utility>

namespace duskrow::hub {

HttpBudget::Place::Place(Place&& other) noexcept
    : m_budget(std::exchange(other.m_budget, nullptr)), m_address(std::move(other.m_address))
{
}

HttpBudget::Place::~Place()
{
    if (m_budget != nullptr) m_budget->leave(m_address);
}

HttpBudget::Bytes::Bytes(HttpBudget* budget, std::string address, std::size_t bytes, Of of)
    : m_budget(budget), m_address(std::move(address)), m_bytes(bytes), m_of(of)
{
}

HttpBudget::Bytes::Bytes(Bytes&& other) noexcept
    : m_budget(std::exchange(other.m_budget, nullptr)), m_address(std::move(other.m_address)),
      m_bytes(other.m_bytes), m_of(other.m_of)
{
}

HttpBudget::Bytes& HttpBudget::Bytes::operator=(Bytes&& other) noexcept
{
    std::swap(m_budget, other.m_budget);
    std::swap(m_address, other.m_address);
    std::swap(m_bytes, other.m_bytes);
    std::swap(m_of, other.m_of);
    return *this;
}

HttpBudget::Bytes::~Bytes()
{
    if (m_budget != nullptr) m_budget->giveBack(m_address, m_bytes, m_of);
}

std::optional<HttpBudget::Place> HttpBudget::enter(const std::string& address)
{
    const std::lock_guard guard(m_mutex);
    if (m_all.connections >= m_most.connections) return std::nullopt;
    const auto known = m_ofOne.find(address);
    if (known != m_ofOne.end() && known->second.connections >= m_most.connectionsOfOne) return std::nullopt;
    ++m_all.connections;
    ++m_ofOne[address].connections;
    return std::make_optional<Place>(this, address);
}

void HttpBudget::leave(const std::string& address)
{
    {
        const std::lock_guard guard(m_mutex);
        --m_all.connections;
        const auto own = m_ofOne.find(address);
        if (own != m_ofOne.end() && --own->second.connections == 0) m_ofOne.erase(own);
    }
    m_changed.notify_all();
}

std::optional<HttpBudget::Bytes> HttpBudget::reserve(const Place& place, std::size_t bytes, Of of)
{
    const std::lock_guard guard(m_mutex);
    const auto sum = of == Of::Body ? &Share::bodies : &Share::answers;
    Share& own = m_ofOne[place.address()];
    if (m_all.*sum + bytes > m_most.bytes || own.*sum + bytes > m_most.bytesOfOne) return std::nullopt;
    m_all.*sum += bytes;
    own.*sum += bytes;
    return std::make_optional<Bytes>(this, place.address(), bytes, of);
}

void HttpBudget::giveBack(const std::string& address, std::size_t bytes, Of of)
{
    const std::lock_guard guard(m_mutex);
    const auto sum = of == Of::Body ? &Share::bodies : &Share::answers;
    m_all.*sum -= bytes;
    const auto own = m_ofOne.find(address);
    if (own != m_ofOne.end()) own->second.*sum -= bytes;
}

std::size_t HttpBudget::connections() const
{
    const std::lock_guard guard(m_mutex);
    return m_all.connections;
}

void HttpBudget::waitUntilEmpty(std::chrono::milliseconds patience)
{
    std::unique_lock guard(m_mutex);
    m_changed.wait_for(guard, patience, [this] { return m_all.connections == 0; });
}

} // namespace duskrow::hub
