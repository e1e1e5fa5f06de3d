// SPDX-License-Identifier: MIT
#pragma once

#include <chrono>
#include <condition_variable>
#include <map>
#include <mutex>
#include <optional>
#include <string>

namespace duskrow::hub {

// How many connections and bytes are under way, in all and for each address.
class HttpBudget {
public:
    struct Most {
        std::size_t connections = 0;
        std::size_t connectionsOfOne = 0; // address
        std::size_t bytes = 0; // of bodies, and as many of answers
        std::size_t bytesOfOne = 0;
    };
    explicit HttpBudget(const Most& most) : m_most(most) { }

    enum class Of : std::uint8_t { Body, Answer };

    // A connection that counts until this goes.
    class Place {
    public:
        Place(HttpBudget* budget, std::string address) : m_budget(budget), m_address(std::move(address)) { }
        Place(Place&& other) noexcept;
        Place(const Place&) = delete;
        Place& operator=(const Place&) = delete;
        Place& operator=(Place&&) = delete;
        ~Place();

        [[nodiscard]] const std::string& address() const { return m_address; }

    private:
        HttpBudget* m_budget;
        std::string m_address;
    };

    // Bytes that count until this goes.
    class Bytes {
    public:
        Bytes(HttpBudget* budget, std::string address, std::size_t bytes, Of of);
        Bytes(Bytes&& other) noexcept;
        Bytes& operator=(Bytes&& other) noexcept;
        Bytes(const Bytes&) = delete;
        Bytes& operator=(const Bytes&) = delete;
        ~Bytes();

    private:
        HttpBudget* m_budget;
        std::string m_address;
        std::size_t m_bytes;
        Of m_of;
    };

    // Nothing when there are too many already.
    std::optional<Place> enter(const std::string& address);
    std::optional<Bytes> reserve(const Place& place, std::size_t bytes, Of of = Of::Body);

    [[nodiscard]] std::size_t connections() const;
    void waitUntilEmpty(std::chrono::milliseconds patience);

private:
    struct Share {
        std::size_t connections = 0;
        std::size_t bodies = 0;
        std::size_t answers = 0;
    };

    void leave(const std::string& address);
    void giveBack(const std::string& address, std::size_t bytes, Of of);

    const Most m_most;
    mutable std::mutex m_mutex;
    std::condition_variable m_changed;
    Share m_all;
    std::map<std::string, Share> m_ofOne; // only addresses that are connected
};

} // namespace duskrow::hub
