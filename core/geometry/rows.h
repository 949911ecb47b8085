// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

#include "core/geometry/point.h"

namespace kerfwall {

/// Boxes in level rows, to find those that meet another box at a cost that hardly grows with their number.
class Rows {
  public:
    explicit Rows(std::vector<Box> boxes) : m_boxes(std::move(boxes)), m_rows(m_boxes.size() + 1) {
        if (m_boxes.empty()) return;
        double high = m_boxes.front().high.y;
        m_low = m_boxes.front().low.y;
        for (const Box& box : m_boxes) {
            m_low = std::min(m_low, box.low.y);
            high = std::max(high, box.high.y);
        }
        if (high > m_low) m_perMm = static_cast<double>(m_boxes.size()) / (high - m_low);
        for (std::size_t i = 0; i < m_boxes.size(); ++i) {
            for (std::size_t r = row(m_boxes[i].low.y); r <= row(m_boxes[i].high.y); ++r) m_rows[r].push_back(i);
        }
    }

    /// Calls `visit(index)` once for every box that meets `box`.
    template <class Visit>
    void meeting(const Box& box, const Visit& visit) const {
        const std::size_t first = row(box.low.y);
        const std::size_t last = row(box.high.y);
        for (std::size_t r = first; r <= last; ++r) {
            for (const std::size_t i : m_rows[r]) {
                const Box& other = m_boxes[i];
                if (other.high.x < box.low.x || other.low.x > box.high.x || other.high.y < box.low.y ||
                    other.low.y > box.high.y) {
                    continue;
                }
                // In the first row both are in.
                if (r == std::max(first, row(other.low.y))) visit(i);
            }
        }
    }

  private:
    [[nodiscard]] std::size_t row(double y) const {
        const double at = (y - m_low) * m_perMm;
        const double last = static_cast<double>(m_rows.size() - 1);
        return at > 0 ? static_cast<std::size_t>(std::min(at, last)) : 0;
    }

    std::vector<Box> m_boxes;
    std::vector<std::vector<std::size_t>> m_rows;
    double m_low = 0;
    double m_perMm = 0;
};

}  // namespace kerfwall
