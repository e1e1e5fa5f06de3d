// SPDX-License-Identifier: MIT
#include "sim/disk.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sqlite3.h>

namespace duskrow::sim {

namespace fs = std::filesystem;

namespace {

std::string bytesOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary | std::ios::ate);
    std::string bytes(file ? static_cast<std::size_t>(file.tellg()) : 0, '\0');
    file.seekg(0);
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    return bytes;
}

// An open file: the real one lies behind this in the same memory.
struct Shim {
    sqlite3_file base;
    std::string* path;

    static Shim* of(sqlite3_file* file) { return reinterpret_cast<Shim*>(file); }
    static sqlite3_file* real(sqlite3_file* file) { return reinterpret_cast<sqlite3_file*>(of(file) + 1); }
    static const sqlite3_io_methods& methods(sqlite3_file* file) { return *real(file)->pMethods; }
};

sqlite3_vfs* system()
{
    static sqlite3_vfs* vfs = sqlite3_vfs_find("unix");
    return vfs;
}

int failure(int otherwise)
{
    return Disk::instance().fault() == Fault::Full ? SQLITE_FULL : otherwise;
}

int closeFile(sqlite3_file* file)
{
    delete Shim::of(file)->path;
    return Shim::methods(file).xClose(Shim::real(file));
}

int read(sqlite3_file* file, void* to, int size, sqlite3_int64 at)
{
    return Shim::methods(file).xRead(Shim::real(file), to, size, at);
}

int write(sqlite3_file* file, const void* from, int size, sqlite3_int64 at)
{
    Disk& disk = Disk::instance();
    const std::string& path = *Shim::of(file)->path;
    if (disk.isDead(path)) return SQLITE_IOERR_WRITE;
    const bool fails = disk.fails(path);
    const int done = Shim::methods(file).xWrite(Shim::real(file), from, fails ? size / 2 : size, at);
    return fails ? failure(SQLITE_IOERR_WRITE) : done;
}

int truncate(sqlite3_file* file, sqlite3_int64 size)
{
    if (Disk::instance().fails(*Shim::of(file)->path, false)) return SQLITE_IOERR_TRUNCATE;
    return Shim::methods(file).xTruncate(Shim::real(file), size);
}

int synchronise(sqlite3_file* file, int)
{
    Disk& disk = Disk::instance();
    if (!disk.isArmed()) return SQLITE_OK; // nothing here outlives a power cut that is not told of before
    const std::string& path = *Shim::of(file)->path;
    if (disk.fails(path, false)) return SQLITE_IOERR_FSYNC;
    disk.synchronised(path);
    return SQLITE_OK;
}

int fileSize(sqlite3_file* file, sqlite3_int64* size)
{
    return Shim::methods(file).xFileSize(Shim::real(file), size);
}

int lock(sqlite3_file* file, int kind)
{
    return Shim::methods(file).xLock(Shim::real(file), kind);
}

int unlock(sqlite3_file* file, int kind)
{
    return Shim::methods(file).xUnlock(Shim::real(file), kind);
}

int checkLock(sqlite3_file* file, int* held)
{
    return Shim::methods(file).xCheckReservedLock(Shim::real(file), held);
}

int control(sqlite3_file*, int, void*)
{
    return SQLITE_NOTFOUND;
}

int sectorSize(sqlite3_file*)
{
    return 512;
}

int characteristics(sqlite3_file*)
{
    return SQLITE_IOCAP_POWERSAFE_OVERWRITE;
}

int shmMap(sqlite3_file* file, int page, int size, int extend, volatile void** to)
{
    return Shim::methods(file).xShmMap(Shim::real(file), page, size, extend, to);
}

int shmLock(sqlite3_file* file, int from, int count, int flags)
{
    return Shim::methods(file).xShmLock(Shim::real(file), from, count, flags);
}

void shmBarrier(sqlite3_file* file)
{
    Shim::methods(file).xShmBarrier(Shim::real(file));
}

int shmUnmap(sqlite3_file* file, int remove)
{
    return Shim::methods(file).xShmUnmap(Shim::real(file), remove);
}

constexpr sqlite3_io_methods methods{2, closeFile, read, write, truncate, synchronise, fileSize, lock, unlock,
    checkLock, control, sectorSize, characteristics, shmMap, shmLock, shmBarrier, shmUnmap, nullptr, nullptr};

int openFile(sqlite3_vfs*, const char* path, sqlite3_file* file, int flags, int* granted)
{
    file->pMethods = nullptr;
    Disk& disk = Disk::instance();
    const std::string name = path != nullptr ? path : "";
    const bool isNew = disk.isArmed() && !name.empty() && !fs::exists(name);
    if (isNew && (flags & SQLITE_OPEN_CREATE) != 0 && disk.fails(name)) return SQLITE_CANTOPEN;
    const int done = system()->xOpen(system(), path, Shim::real(file), flags, granted);
    if (done != SQLITE_OK) return done;
    Shim::of(file)->path = new std::string(name);
    file->pMethods = &methods;
    if (disk.isArmed()) disk.opened(name, isNew);
    return SQLITE_OK;
}

int removeFile(sqlite3_vfs*, const char* path, int)
{
    Disk& disk = Disk::instance();
    if (disk.fails(path, false)) return SQLITE_IOERR_DELETE;
    disk.removed(path);
    return system()->xDelete(system(), path, 0);
}

} // namespace

Disk& Disk::instance()
{
    static Disk disk;
    return disk;
}

Disk::Disk()
{
    static sqlite3_vfs vfs = *system();
    vfs.pNext = nullptr;
    vfs.zName = "sim";
    vfs.szOsFile = static_cast<int>(sizeof(Shim)) + system()->szOsFile;
    vfs.xOpen = openFile;
    vfs.xDelete = removeFile;
    sqlite3_vfs_register(&vfs, 1);
}

void Disk::arm(const std::set<std::string>& below, long failAt, Fault fault)
{
    m_files.clear();
    m_below = below;
    m_failAt = failAt;
    m_count = 0;
    m_fault = fault;
    m_hasFailed = false;
    if (fault == Fault::PowerCut)
        for (const std::string& folder : below)
            for (const auto& entry : fs::recursive_directory_iterator(folder))
                if (const std::string path = entry.path().string();
                    entry.is_regular_file() && !path.ends_with("-shm"))
                    m_files[path] = {bytesOf(path), true};
    m_isArmed = true;
}

bool Disk::disarm()
{
    m_isArmed = false;
    return m_hasFailed;
}

bool Disk::isBelow(const std::string& path) const
{
    return std::any_of(
        m_below.begin(), m_below.end(), [&](const std::string& folder) { return path.starts_with(folder); });
}

bool Disk::isDead(const std::string& path)
{
    return m_isArmed && m_hasFailed && (m_fault == Fault::Kill || m_fault == Fault::PowerCut)
        && isBelow(path);
}

bool Disk::fails(const std::string& path, bool grows)
{
    if (!m_isArmed || !isBelow(path)) return false;
    if (m_fault == Fault::Full && !grows) return false;
    const long now = m_count++;
    const bool fails = m_fault == Fault::Once ? now == m_failAt : now >= m_failAt;
    m_hasFailed = m_hasFailed || fails;
    return fails;
}

void Disk::opened(const std::string& path, bool isNew)
{
    if (m_fault != Fault::PowerCut || !isBelow(path) || path.ends_with(".lock")) return;
    m_files.try_emplace(path, File{isNew ? std::string() : bytesOf(path), !isNew});
}

void Disk::synchronised(const std::string& path)
{
    if (m_fault == Fault::PowerCut && isBelow(path)) m_files[path] = {bytesOf(path), true};
}

void Disk::removed(const std::string& path)
{
    if (m_isArmed) m_files.erase(path);
}

void Disk::losePower(Random& random)
{
    constexpr std::size_t sector = 512;
    for (const auto& [path, file] : m_files) {
        // What is written whole is synchronised before it gets its name.
        const bool isOfSqlite = path.ends_with(".db") || path.ends_with("-wal") || path.ends_with("-journal");
        if (!isOfSqlite || !fs::exists(path)) continue;
        if (!file.isDurable && random.percent(50)) {
            fs::remove(path);
            continue;
        }
        const std::string live = bytesOf(path);
        std::string left = file.durable;
        if (random.percent(50)) left.resize(live.size());
        const auto chance = random.below(3); // none, half or all of what was under way
        for (std::size_t at = 0; at < live.size(); at += sector) {
            if (chance == 0 || (chance == 1 && random.percent(50))) continue;
            const std::size_t size = std::min(sector, live.size() - at);
            if (left.size() < at + size) left.resize(at + size);
            left.replace(at, size, live, at, size);
        }
        std::ofstream(path, std::ios::binary | std::ios::trunc) << left;
    }
    m_files.clear();
}

} // namespace duskrow::sim
