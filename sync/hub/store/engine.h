// SPDX-License-Identifier: MIT
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "domain/base/result.h"

// The little that the hub asks of a database, so that its questions are written once for both kinds.
namespace duskrow::hub {

struct Blob {
    std::string bytes;
};

// There is no NULL in the hub's tables.
using Cell = std::variant<std::int64_t, std::string, Blob>;

class Row {
public:
    explicit Row(std::vector<Cell> cells) : m_cells(std::move(cells)) { }

    // What is of another type reads as 0 or empty: the tables' types are fixed by the migrations.
    [[nodiscard]] std::int64_t number(std::size_t column) const;
    [[nodiscard]] const std::string& text(std::size_t column) const;
    [[nodiscard]] const std::string& bytes(std::size_t column) const;
    [[nodiscard]] const std::vector<Cell>& cells() const { return m_cells; }

private:
    std::vector<Cell> m_cells;
};

using Rows = std::vector<Row>;

// One transaction under way. After the first failure every question gives no rows, and in the end nothing is
// kept: the work need not look after each question.
class Session {
public:
    Session() = default;
    Session(const Session&) = delete;
    Session& operator=(const Session&) = delete;
    virtual ~Session() = default;

    // sql  parameters are $1, $2 ... ; never put together from what came from outside
    virtual Rows run(std::string_view sql, const std::vector<Cell>& values = {}) = 0;

    // Ends a SELECT of rows that this transaction is going to change.
    [[nodiscard]] virtual std::string_view forUpdate() const = 0;

    [[nodiscard]] bool isFailed() const { return m_error.has_value(); }
    [[nodiscard]] const std::optional<domain::Error>& error() const { return m_error; }

protected:
    std::optional<domain::Error> m_error;
};

using Work = std::function<void(Session&)>;

// A database of the hub, brought to the newest form. May be used by several threads at once.
class Engine {
public:
    Engine() = default;
    Engine(const Engine&) = delete;
    Engine& operator=(const Engine&) = delete;
    virtual ~Engine() = default;

    // Runs the work as one transaction and returns once it is on the disk. The work may run more than once;
    // what it hands out counts only when this succeeds.
    //
    // group   works of one group wait for the same row anyway, and may be committed together; "" for none
    // Errors  DiskFull, DiskFailed, StoreBusy, StoreDamaged, StoreUnreachable
    virtual domain::Result<domain::Done> write(const Work& work, const std::string& group = {}) = 0;

    // Runs the work over one state of the store.
    virtual domain::Result<domain::Done> read(const Work& work) = 0;
};

// Serve: nobody else may serve from the same file. Beside: a short visit, also while a hub serves.
enum class Opening { Serve, Beside };

// A file of SQLite, made when there is none. Several writes that wait are committed together.
//
// Errors  StoreNotOurs; StoreNewer; StoreBusy when another hub serves from it; what SQLite says
domain::Result<std::unique_ptr<Engine>> openSqlite(const std::string& path, Opening opening);

// PostgreSQL, or what speaks like it. Several hubs may use one at once.
//
// Errors  StoreUnreachable {where}; StoreNewer
domain::Result<std::unique_ptr<Engine>> openPostgres(const std::string& url);

// By its name: "postgresql://..." or a file.
domain::Result<std::unique_ptr<Engine>> openEngine(const std::string& where, Opening opening);

} // namespace duskrow::hub
