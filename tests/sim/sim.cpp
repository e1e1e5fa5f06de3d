// SPDX-License-Identifier: MIT
// sim [--seeds A-B] [--steps N] [--minutes M] [--trace]: many phones, a hub and a folder in one process, each
// run driven by its seed alone. Prints the seeds that broke something, and how many faults of which kind
// there were.
#include <chrono>
#include <cstring>
#include <iostream>
#include <string_view>
#include <unistd.h>

#include "sim/world.h"

namespace {

using namespace duskrow::sim;

struct Wanted {
    std::uint64_t from = 1;
    std::uint64_t to = 10;
    int steps = 400;
    int minutes = 0; // begins no run after these; 0: all seeds
    bool trace = false;
};

Wanted wantedIn(int count, char** words)
{
    Wanted wanted;
    for (int i = 1; i < count; ++i) {
        const std::string word = words[i];
        if (word == "--seeds" && i + 1 < count) {
            const std::string range = words[++i];
            const auto dash = range.find('-');
            wanted.from = std::stoull(range);
            wanted.to = dash == std::string::npos ? wanted.from : std::stoull(range.substr(dash + 1));
        } else if (word == "--steps" && i + 1 < count)
            wanted.steps = std::stoi(words[++i]);
        else if (word == "--minutes" && i + 1 < count)
            wanted.minutes = std::stoi(words[++i]);
        else if (word == "--trace")
            wanted.trace = true;
    }
    return wanted;
}

// Of another process, and always of the same length: the path stands in stores, and how many pages a store
// writes must not hang on it.
std::string nameOfProcess()
{
    static constexpr std::string_view digits =
        "0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
    std::string name;
    for (auto rest = static_cast<std::size_t>(getpid()); name.size() < 4; rest /= digits.size())
        name += digits[rest % digits.size()];
    return name;
}

struct Counts {
    std::map<std::string, long> faults; // injected
    std::map<std::string, long> counts; // what came of them
};

bool run(std::uint64_t seed, const Wanted& wanted, const fs::path& folder, Counts& counts)
{
    World world(seed, folder);
    bool isSound = true;
    try {
        world.begin();
        for (int i = 0; i < wanted.steps; ++i) world.step();
        world.say("finish");
        world.finish();
    } catch (const Broken& what) {
        isSound = false;
        std::cout << "seed " << seed << " broke at step " << world.steps << ": " << what.what() << std::endl;
        if (wanted.trace) std::cout << "steps:" << world.trace << '\n';
    }
    counts.counts["changes written"] += world.book.size();
    for (const auto& [name, number] : world.counts) counts.counts[name] += number;
    for (const auto& [name, number] : world.faults) counts.faults[name] += number;
    if (wanted.trace) std::cout << "seed " << seed << " ends with " << world.random.next() << '\n';
    return isSound;
}

} // namespace

int main(int count, char** words)
{
    const Wanted wanted = wantedIn(count, words);
    const fs::path base = fs::exists("/dev/shm") ? "/dev/shm" : fs::temp_directory_path();
    const fs::path folder = base / ("duskrow-sim-" + nameOfProcess());
    const auto began = std::chrono::steady_clock::now();
    Counts counts;
    long bad = 0;
    std::uint64_t seed = wanted.from;
    const auto isTimeLeft = [&] {
        return wanted.minutes == 0
            || std::chrono::steady_clock::now() - began < std::chrono::minutes(wanted.minutes);
    };
    for (; seed <= wanted.to && isTimeLeft(); ++seed) bad += run(seed, wanted, folder, counts) ? 0 : 1;
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
    for (const auto& [name, number] : counts.counts) std::cout << name << ": " << number << '\n';
    for (const auto& [name, number] : counts.faults)
        std::cout << "faults injected: " << name << ' ' << number << '\n';
    std::cout << seed - wanted.from << " seeds of " << wanted.steps << " steps, " << bad << " broke, "
              << took.count() << " s\n";
    return bad == 0 ? 0 : 1;
}
