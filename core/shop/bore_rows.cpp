// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/bore_rows.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/shop/bore.h"
#include "core/shop/step_text.h"

namespace kerfwall {
namespace {

constexpr double kSameSetting = 1e-6;  ///< mm: far below anything a hand can set

bool isSame(double one, double other) { return std::abs(one - other) <= kSameSetting; }

std::vector<Bore> allBores(const Project& project, const Solved& solved) {
    std::vector<Bore> bores;
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Corner& corner : cutout.corners) {
            if (!isBored(corner, solved)) continue;
            const Point centre = centreOf(corner, *corner.boreRadius);
            bores.push_back({corner.first, corner.second, centre, *corner.boreRadius,
                             distanceFromEdge(project.panel, project.panel.referenceEdge, centre),
                             distanceFromEdge(project.panel, measuredEnd(project.panel), centre)});
        }
    }
    return bores;
}

/// The rows of each diameter, rows and the bores in them by distance.
std::vector<std::vector<BoreRow>> rowsByDiameter(const Bench& bench, const std::vector<Bore>& bores) {
    std::vector<std::vector<BoreRow>> diameters;
    for (const Bore& bore : bores) {
        auto of = std::ranges::find_if(
            diameters, [&](const auto& rows) { return isSame(rows.front().front().radius, bore.radius); });
        if (of == diameters.end()) of = diameters.emplace(diameters.end());
        const bool atPress = boreToolFor(bench, bore.radius).drill;
        auto row = std::ranges::find_if(
            *of, [&](const BoreRow& is) { return !atPress || isSame(is.front().fence, bore.fence); });
        if (row == of->end()) row = of->emplace(of->end());
        row->push_back(bore);
    }
    for (std::vector<BoreRow>& rows : diameters) {
        for (BoreRow& row : rows) std::ranges::stable_sort(row, {}, &Bore::stop);
        std::ranges::stable_sort(rows, {}, [](const BoreRow& row) { return row.front().fence; });
    }
    return diameters;
}

std::vector<BoreRow>::iterator rowAt(std::vector<BoreRow>& rows, double fence) {
    return std::ranges::find_if(rows, [&](const BoreRow& row) { return isSame(row.front().fence, fence); });
}

/// The row at the fence's last place goes first, one that the next diameter has too goes last.
void joinRows(std::vector<BoreRow>& rows, const BoreRow* last, std::vector<BoreRow>* next) {
    auto from = rows.begin();
    if (last) {
        if (const auto row = rowAt(rows, last->front().fence); row != rows.end()) {
            std::rotate(rows.begin(), row, row + 1);
            if (rows.size() > 1) ++from;
        }
    }
    if (!next) return;
    const auto shared = std::find_if(
        from, rows.end(), [&](const BoreRow& row) { return rowAt(*next, row.front().fence) != next->end(); });
    if (shared != rows.end()) std::rotate(shared, shared + 1, rows.end());
}

}  // namespace

std::vector<BoreRow> boreRows(const Project& project, const Solved& solved) {
    std::vector<std::vector<BoreRow>> diameters = rowsByDiameter(benchOf(project), allBores(project, solved));
    std::vector<BoreRow> all;
    for (std::size_t i = 0; i < diameters.size(); ++i) {
        joinRows(diameters[i], all.empty() ? nullptr : &all.back(), i + 1 < diameters.size() ? &diameters[i + 1] : nullptr);
        for (BoreRow& row : diameters[i]) {
            if (!all.empty() && isSame(all.back().back().stop, row.back().stop)) std::ranges::reverse(row);
            all.push_back(std::move(row));
        }
    }
    return all;
}

}  // namespace kerfwall
