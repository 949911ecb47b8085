// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <set>
#include <string>

#include "core/says/project.h"
#include "tests/oracle/dice.h"

namespace kerfwall::oracle {

/// A hostile layout in the making.
class HostileDraft {
  public:
    explicit HostileDraft(std::uint64_t seed);

    [[nodiscard]] Dice& dice() { return m_dice; }
    /// 1 to 9 times a power of ten from 1e-9 to 1e-3 mm, either way.
    [[nodiscard]] double nudge();
    /// Nothing, or a nudge.
    [[nodiscard]] double maybeNudge();
    [[nodiscard]] double kerf();  ///< of one of the saws
    [[nodiscard]] Point centre();

    void setKerfs(double low, double high);
    void setBit(double diameter);
    void setPanel(double width, double height);

    /// A line by two points, 100 mm apart.
    void lay(Point through, double degrees);
    void layPoints(Point p, Point q);
    void layPlace(const Place& place);
    /// `count` lines round `c`, from `low` to `high` away.
    void ring(Point c, int count, double low, double high);
    /// A window by offsets from the edges.
    void window(Point low, Point high);
    /// A cutout of up to `faces` faces from the one round `at` on, over sides of its faces; none of another's.
    void mark(Point at, int faces);

    Project project;

  private:
    Dice m_dice;
    std::set<std::string> m_marked;
};

[[nodiscard]] Point headingOf(double degrees);

}  // namespace kerfwall::oracle
