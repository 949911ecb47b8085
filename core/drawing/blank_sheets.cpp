// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/blank_sheets.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace kerfwall {
namespace {

constexpr double kTouch = 1e-9;  // mm: a stretch that only touches a cell's border is not in it

/// One direction cut into cells: what one sheet alone shows, then what it shares with the next, and so on.
struct Cells {
    std::vector<double> borders;  // count + 1 of them
    std::vector<int> first;       // sheets that show the cell: from first ...
    std::vector<int> last;        // ... to last

    [[nodiscard]] std::size_t count() const { return first.size(); }
    /// Half open, so that a stretch along a border is in one cell; the last one is closed.
    [[nodiscard]] bool holds(std::size_t cell, double at) const {
        return at >= borders[cell] && (at < borders[cell + 1] || cell + 1 == count());
    }
};

Cells cellsOf(const Tiles& tiles) {
    std::vector<double> borders{0};
    for (int i = 0; i < tiles.count; ++i) {
        borders.push_back(i * tiles.step);
        borders.push_back(i * tiles.step + tiles.window);
    }
    std::ranges::sort(borders);
    Cells cells;
    cells.borders.push_back(0);
    for (const double border : borders) {
        if (border - cells.borders.back() < kTouch) continue;
        const double middle = (cells.borders.back() + border) / 2;
        int first = tiles.count;
        int last = 0;
        for (int i = 0; i < tiles.count; ++i) {
            if (middle < i * tiles.step || middle > i * tiles.step + tiles.window) continue;
            first = std::min(first, i);
            last = std::max(last, i);
        }
        cells.borders.push_back(border);
        cells.first.push_back(first);
        cells.last.push_back(last);
    }
    return cells;
}

/// The middle of the part of a stretch inside a closed cell, where that has a length.
bool isInCell(const Stretch& stretch, const Cells& across, std::size_t column, const Cells& up, std::size_t row) {
    const Point way = stretch.second - stretch.first;
    double from = 0;
    double to = 1;
    const auto cut = [&](double start, double along, double low, double high) {
        if (along == 0) return start >= low && start <= high;
        const double a = (low - start) / along;
        const double b = (high - start) / along;
        from = std::max(from, std::min(a, b));
        to = std::min(to, std::max(a, b));
        return from < to;
    };
    if (!cut(stretch.first.x, way.x, across.borders[column], across.borders[column + 1])) return false;
    if (!cut(stretch.first.y, way.y, up.borders[row], up.borders[row + 1])) return false;
    if ((to - from) * length(way) < kTouch) return false;
    const Point middle = stretch.first + ((from + to) / 2) * way;
    return across.holds(column, middle.x) && up.holds(row, middle.y);
}

class Choice {
  public:
    Choice(const Tiles& across, const Tiles& up)
        : m_columns(across.count), m_across(cellsOf(across)), m_up(cellsOf(up)),
          m_kept(static_cast<std::size_t>(across.count) * up.count, false), m_used(m_across.count() * m_up.count(), false) {}

    void mark(const Stretch& stretch) {
        const auto [left, right] = std::minmax(stretch.first.x, stretch.second.x);
        const auto [low, high] = std::minmax(stretch.first.y, stretch.second.y);
        for (std::size_t row = 0; row < m_up.count(); ++row) {
            if (m_up.borders[row + 1] < low || m_up.borders[row] > high) continue;
            for (std::size_t column = 0; column < m_across.count(); ++column) {
                if (m_across.borders[column + 1] < left || m_across.borders[column] > right) continue;
                if (!used(column, row) && isInCell(stretch, m_across, column, m_up, row)) used(column, row) = true;
            }
        }
    }

    std::vector<bool> kept() {
        // Cells of one sheet say which sheets must stay; then those of two, then the corners that four share.
        for (const int sharers : {1, 2, 4}) {
            forUsedCells([&](int left, int right, int low, int high) {
                if ((right - left + 1) * (high - low + 1) > sharers || isShown(left, right, low, high)) return;
                m_kept[at(left, low)] = true;
            });
        }
        forUsedCells([&](int left, int right, int low, int high) {  // overlaps of more than half a sheet
            if (!isShown(left, right, low, high)) m_kept[at(left, low)] = true;
        });
        return m_kept;
    }

  private:
    std::vector<bool>::reference used(std::size_t column, std::size_t row) { return m_used[row * m_across.count() + column]; }
    [[nodiscard]] std::size_t at(int column, int row) const { return static_cast<std::size_t>(row) * m_columns + column; }

    [[nodiscard]] bool isShown(int left, int right, int low, int high) const {
        for (int row = low; row <= high; ++row) {
            for (int column = left; column <= right; ++column) {
                if (m_kept[at(column, row)]) return true;
            }
        }
        return false;
    }

    template <typename Visit>
    void forUsedCells(const Visit& visit) {
        for (std::size_t row = 0; row < m_up.count(); ++row) {
            for (std::size_t column = 0; column < m_across.count(); ++column) {
                if (used(column, row)) visit(m_across.first[column], m_across.last[column], m_up.first[row], m_up.last[row]);
            }
        }
    }

    int m_columns;
    Cells m_across;
    Cells m_up;
    std::vector<bool> m_kept;
    std::vector<bool> m_used;
};

}  // namespace

std::vector<bool> sheetsWithMarks(const Tiles& across, const Tiles& up, const std::vector<Stretch>& drawn) {
    Choice choice(across, up);
    for (const Stretch& stretch : drawn) choice.mark(stretch);
    return choice.kept();
}

}  // namespace kerfwall
