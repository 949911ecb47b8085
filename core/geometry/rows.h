// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <vector>

#include "core/geometry/point.h"

namespace kerfwall {

/// Boxes in level rows, to find those that meet another box at a cost that hardly grows with their number.
class Rows {
  public:
    explicit Rows(const std::vector<Box>& boxes) : m_count(boxes.size() + 1), m_starts(m_count + 1, 0) {
        if (boxes.empty()) return;
        double high = boxes.front().high.y;
        m_low = boxes.front().low.y;
        for (const Box& box : boxes) {
            m_low = std::min(m_low, box.low.y);
            high = std::max(high, box.high.y);
        }
        if (high > m_low) m_perMm = static_cast<double>(boxes.size()) / (high - m_low);
        const auto forRows = [&](const auto& act) {
            for (std::size_t i = 0; i < boxes.size(); ++i) {
                const std::size_t first = row(boxes[i].low.y);
                for (std::size_t r = first; r <= row(boxes[i].high.y); ++r) act(r, Entry{boxes[i], first, i});
            }
        };
        forRows([&](std::size_t r, const Entry&) { ++m_starts[r + 1]; });
        std::partial_sum(m_starts.begin(), m_starts.end(), m_starts.begin());
        m_entries.resize(m_starts.back());
        std::vector<std::size_t> next = m_starts;
        forRows([&](std::size_t r, const Entry& entry) { m_entries[next[r]++] = entry; });
    }

    /// Calls `visit(index)` once for every box that meets `box`.
    template <class Visit>
    void meeting(const Box& box, const Visit& visit) const {
        const std::size_t first = row(box.low.y);
        const std::size_t last = row(box.high.y);
        for (std::size_t r = first; r <= last; ++r) {
            for (std::size_t e = m_starts[r]; e < m_starts[r + 1]; ++e) {
                const Entry& other = m_entries[e];
                if (other.box.high.x < box.low.x || other.box.low.x > box.high.x || other.box.high.y < box.low.y ||
                    other.box.low.y > box.high.y) {
                    continue;
                }
                // Told in the first row that both are in.
                if (r == std::max(first, other.firstRow)) visit(other.index);
            }
        }
    }

  private:
    struct Entry {
        Box box;
        std::size_t firstRow = 0;
        std::size_t index = 0;
    };
    [[nodiscard]] std::size_t row(double y) const {
        const double at = (y - m_low) * m_perMm;
        return at > 0 ? static_cast<std::size_t>(std::min(at, static_cast<double>(m_count - 1))) : 0;
    }

    std::size_t m_count;
    std::vector<std::size_t> m_starts;  ///< of each row's entries, and the end of the last
    std::vector<Entry> m_entries;
    double m_low = 0;
    double m_perMm = 0;
};

}  // namespace kerfwall
