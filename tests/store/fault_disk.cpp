// SPDX-License-Identifier: MIT
#include "store/fault_disk.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <new>
#include <sqlite3.h>

namespace duskrow::tests {

namespace {

std::string bytesOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

// An open file: the real one lies behind this in the same memory.
struct Shim {
    sqlite3_file base;
    std::string* path;

    static Shim* of(sqlite3_file* file) { return reinterpret_cast<Shim*>(file); }
    static sqlite3_file* real(sqlite3_file* file) { return reinterpret_cast<sqlite3_file*>(of(file) + 1); }
};

sqlite3_vfs* system()
{
    static sqlite3_vfs* vfs = sqlite3_vfs_find(nullptr);
    return vfs;
}

int closeFile(sqlite3_file* file)
{
    delete Shim::of(file)->path;
    return Shim::real(file)->pMethods->xClose(Shim::real(file));
}

int read(sqlite3_file* file, void* to, int size, sqlite3_int64 at)
{
    return Shim::real(file)->pMethods->xRead(Shim::real(file), to, size, at);
}

int write(sqlite3_file* file, const void* from, int size, sqlite3_int64 at)
{
    const bool fails = FaultDisk::instance().fails("write " + *Shim::of(file)->path);
    const int done = Shim::real(file)->pMethods->xWrite(Shim::real(file), from, fails ? size / 2 : size, at);
    return fails ? SQLITE_IOERR_WRITE : done;
}

int truncate(sqlite3_file* file, sqlite3_int64 size)
{
    if (FaultDisk::instance().fails("truncate")) return SQLITE_IOERR_TRUNCATE;
    return Shim::real(file)->pMethods->xTruncate(Shim::real(file), size);
}

int synchronise(sqlite3_file* file, int)
{
    if (FaultDisk::instance().fails("synchronise")) return SQLITE_IOERR_FSYNC;
    FaultDisk::instance().synchronised(*Shim::of(file)->path);
    return SQLITE_OK;
}

int fileSize(sqlite3_file* file, sqlite3_int64* size)
{
    return Shim::real(file)->pMethods->xFileSize(Shim::real(file), size);
}

int lock(sqlite3_file* file, int kind)
{
    return Shim::real(file)->pMethods->xLock(Shim::real(file), kind);
}

int unlock(sqlite3_file* file, int kind)
{
    return Shim::real(file)->pMethods->xUnlock(Shim::real(file), kind);
}

int checkLock(sqlite3_file* file, int* held)
{
    return Shim::real(file)->pMethods->xCheckReservedLock(Shim::real(file), held);
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

// Version 1: no shared memory, so that the log's index stays in the process.
constexpr sqlite3_io_methods methods{1, closeFile, read, write, truncate, synchronise, fileSize, lock, unlock,
    checkLock, control, sectorSize, characteristics, nullptr, nullptr, nullptr, nullptr, nullptr, nullptr};

int openFile(sqlite3_vfs*, const char* path, sqlite3_file* file, int flags, int* granted)
{
    file->pMethods = nullptr;
    const bool isNew = path && !std::filesystem::exists(path);
    if (isNew && (flags & SQLITE_OPEN_CREATE) != 0 && FaultDisk::instance().fails("create"))
        return SQLITE_CANTOPEN;
    const int done = system()->xOpen(system(), path, Shim::real(file), flags, granted);
    if (done != SQLITE_OK) return done;
    Shim::of(file)->path = new std::string(path ? path : "");
    file->pMethods = &methods;
    FaultDisk::instance().opened(*Shim::of(file)->path, isNew);
    return SQLITE_OK;
}

int removeFile(sqlite3_vfs*, const char* path, int)
{
    if (FaultDisk::instance().fails("remove")) return SQLITE_IOERR_DELETE;
    FaultDisk::instance().removed(path);
    return system()->xDelete(system(), path, 0);
}

} // namespace

FaultDisk& FaultDisk::instance()
{
    static FaultDisk disk;
    return disk;
}

FaultDisk::FaultDisk()
{
    static sqlite3_vfs vfs = *system();
    vfs.iVersion = 1;
    vfs.pNext = nullptr;
    vfs.zName = name;
    vfs.szOsFile = static_cast<int>(sizeof(Shim)) + system()->szOsFile;
    vfs.xOpen = openFile;
    vfs.xDelete = removeFile;
    sqlite3_vfs_register(&vfs, 0);
}

void FaultDisk::arm(long failAt, Fault fault)
{
    m_files.clear();
    m_steps.clear();
    m_failAt = failAt;
    m_count = 0;
    m_fault = fault;
    m_hasFailed = false;
}

bool FaultDisk::disarm()
{
    m_failAt = -1;
    return m_hasFailed;
}

bool FaultDisk::fails(const std::string& step)
{
    if (m_failAt < 0) return false;
    m_steps.push_back(step);
    const long now = m_count++;
    const bool fails = m_fault == Fault::Once ? now == m_failAt : now >= m_failAt;
    m_hasFailed = m_hasFailed || fails;
    return fails;
}

void FaultDisk::opened(const std::string& path, bool isNew)
{
    if (!path.empty()) m_files.try_emplace(path, File{isNew ? std::string() : bytesOf(path), !isNew});
}

void FaultDisk::synchronised(const std::string& path)
{
    if (!path.empty()) m_files[path] = {bytesOf(path), true};
}

void FaultDisk::losePower(std::mt19937& random)
{
    constexpr std::size_t sector = 512;
    for (const auto& [path, file] : m_files) {
        if (!std::filesystem::exists(path)) continue;
        if (!file.isDurable && random() % 2 == 0) {
            std::filesystem::remove(path);
            continue;
        }
        const std::string live = bytesOf(path);
        std::string left = file.durable;
        if (random() % 2 == 0) left.resize(live.size());
        const auto chance = random() % 3; // none, half or all of what was under way
        for (std::size_t at = 0; at < live.size(); at += sector) {
            if (chance == 0 || (chance == 1 && random() % 2 == 0)) continue;
            const std::size_t size = std::min(sector, live.size() - at);
            if (left.size() < at + size) left.resize(at + size);
            left.replace(at, size, live, at, size);
        }
        std::ofstream(path, std::ios::binary | std::ios::trunc) << left;
    }
}

} // namespace duskrow::tests
