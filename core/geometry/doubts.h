// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "core/geometry/solved.h"

namespace kerfwall {

/// Gathers what is doubted, one doubt for a place: what goes wrong there is seldom seen by one check alone.
class Doubts {
  public:
    /// `known` is doubted already and not said again; places within `reach` (mm) are one.
    Doubts(std::vector<Doubt> known, double reach)
        : m_all(std::move(known)), m_known(m_all.size()), m_reach(reach) {}

    void add(Point at, const char* what) {
        // More places than that tell a maker nothing more, and the papers have to hold the sentences.
        constexpr std::size_t kMost = 6;
        if (m_all.size() - m_known >= kMost) return;
        const bool isKnown =
            std::ranges::any_of(m_all, [&](const Doubt& doubt) { return distance(doubt.at, at) <= m_reach; });
        if (!isKnown) m_all.push_back({at, what});
    }
    /// What was added.
    [[nodiscard]] std::vector<Doubt> added() const {
        return {m_all.begin() + static_cast<std::ptrdiff_t>(m_known), m_all.end()};
    }

  private:
    std::vector<Doubt> m_all;
    std::size_t m_known;
    double m_reach;
};

}  // namespace kerfwall
