// SPDX-License-Identifier: MIT
// The calls of the system by which whole files come into their place, and the one that tells the time, seen
// before the system sees them.
#include <cerrno>
#include <climits>
#include <cstdio>
#include <ctime>
#include <dlfcn.h>
#include <string>
#include <unistd.h>

#include "sim/clock.h"
#include "sim/disk.h"

namespace {

template <typename Call>
Call* next(const char* name)
{
    return reinterpret_cast<Call*>(dlsym(RTLD_NEXT, name));
}

std::string pathOf(int file)
{
    char path[PATH_MAX];
    const std::string link = "/proc/self/fd/" + std::to_string(file);
    const ssize_t size = readlink(link.c_str(), path, sizeof path);
    return size < 0 ? std::string() : std::string(path, static_cast<std::size_t>(size));
}

bool isOfSqlite(const std::string& path)
{
    return path.find(".db") != std::string::npos;
}

int refuse()
{
    errno = duskrow::sim::Disk::instance().fault() == duskrow::sim::Fault::Full ? ENOSPC : EIO;
    return -1;
}

} // namespace

extern "C" int rename(const char* from, const char* to)
{
    static auto* const real = next<int(const char*, const char*)>("rename");
    if (duskrow::sim::Disk::instance().fails(to, false)) return refuse();
    return real(from, to);
}

extern "C" int fsync(int file)
{
    auto& disk = duskrow::sim::Disk::instance();
    if (!disk.isArmed()) return 0;
    const std::string path = pathOf(file);
    if (isOfSqlite(path)) return 0; // counted above
    return disk.fails(path) ? refuse() : 0;
}

std::atomic<std::int64_t> duskrow::sim::machineClock{0};

extern "C" int clock_gettime(clockid_t clock, struct timespec* time) noexcept
{
    static auto* const real = next<int(clockid_t, struct timespec*)>("clock_gettime");
    const std::int64_t now = duskrow::sim::machineClock;
    if (clock != CLOCK_REALTIME || now == 0) return real(clock, time);
    *time = {static_cast<time_t>(now / 1000), static_cast<long>(now % 1000) * 1'000'000};
    return 0;
}

extern "C" int remove(const char* path)
{
    static auto* const real = next<int(const char*)>("remove");
    if (duskrow::sim::Disk::instance().isDead(path)) return refuse();
    return real(path);
}
