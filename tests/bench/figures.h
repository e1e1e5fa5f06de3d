// SPDX-License-Identifier: MIT
#pragma once

#include <cstdio>
#include <string>
#include <vector>

namespace duskrow::tests {

// The figures of a run, printed as one table: name, figure, limit, and whether it holds.
class Figures {
public:
    void note(std::string name, double figure, std::string unit)
    {
        m_rows.push_back({std::move(name), figure, std::move(unit), 0});
    }
    void limit(std::string name, double figure, std::string unit, double most)
    {
        m_rows.push_back({std::move(name), figure, std::move(unit), most});
    }

    // False when a limit is broken.
    [[nodiscard]] bool print() const
    {
        bool holds = true;
        std::printf("\n%-52s %12s %12s\n", "figure", "measured", "limit");
        for (const Row& row : m_rows) {
            std::printf("%-52s %9.3f %-4s", row.name.c_str(), row.figure, row.unit.c_str());
            const bool isBroken = row.most > 0 && row.figure > row.most;
            if (row.most > 0)
                std::printf(" %7.1f %-4s %s", row.most, row.unit.c_str(), isBroken ? "too slow" : "ok");
            std::printf("\n");
            holds = holds && !isBroken;
        }
        return holds;
    }

private:
    struct Row {
        std::string name;
        double figure;
        std::string unit;
        double most; // 0 for none
    };
    std::vector<Row> m_rows;
};

inline Figures& figures()
{
    static Figures all;
    return all;
}

} // namespace duskrow::tests
