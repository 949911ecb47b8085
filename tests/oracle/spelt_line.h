// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/says/project.h"
#include "tests/oracle/byte_reader.h"

namespace kerfwall::oracle {

/// Lays lines on a panel as bytes say: on a grid, by angles, or hard by what an earlier line decides.
class SpeltLines {
  public:
    explicit SpeltLines(Project& project) : m_project(project) {}
    /// Adds one line; takes six bytes.
    void add(ByteReader& bytes);

  private:
    /// A laid line in doubles, for those laid from it.
    struct Drawn {
        Point p;
        Point q;
        bool isLevelOrUpright = false;
    };
    using Numbers = std::array<std::size_t, 4>;
    struct Laid {
        Place place;
        Drawn drawn;
    };

    [[nodiscard]] Laid laid(std::size_t way, const Numbers& n) const;
    [[nodiscard]] Laid fromEdge(Edge edge, double distance) const;
    [[nodiscard]] Laid turned(Edge edge, double degrees, Point through) const;
    [[nodiscard]] Laid betweenPlaces(const Numbers& n, double parts) const;
    [[nodiscard]] Laid inTriple(const Numbers& n) const;
    [[nodiscard]] Laid marked(const Numbers& n) const;
    [[nodiscard]] Laid beside(std::size_t other, double distance) const;
    [[nodiscard]] Laid aslant(std::size_t other, double angle, bool aboutEnd) const;
    [[nodiscard]] Laid mirrored(std::size_t other, bool upright) const;
    [[nodiscard]] double tellingDistance(std::size_t which, std::size_t nudge) const;
    [[nodiscard]] Point placeAt(std::size_t x, std::size_t y, double parts) const;

    Project& m_project;
    std::vector<Drawn> m_drawn;
};

}  // namespace kerfwall::oracle
