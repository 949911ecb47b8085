// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/running_sizes.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/drawn_size.h"
#include "core/drawing/plan_parts.h"
#include "core/geometry/edge_place.h"

namespace kerfwall {
namespace {

constexpr double kSameSize = 0.005;  // mm: sizes that read the same
// mm on paper.
constexpr double kBend = 2;          // outside the edge, where a line turns to its number
constexpr double kNumberAway = 6;
constexpr double kNumberHeight = 3;
constexpr double kNumberStep = 3.4;  // from number to number
constexpr double kHalfLetter = 0.36;

struct Size {
    double from = 0;
    Point place;  ///< nearest to where the number stands
};

std::vector<Size> sizesOf(const Panel& panel, Edge from, Edge beside, std::vector<Point> places) {
    std::ranges::sort(places, {}, [&](Point place) { return distanceFromEdge(panel, from, place); });
    std::vector<Size> sizes;
    for (const Point place : places) {
        const double off = distanceFromEdge(panel, from, place);
        if (sizes.empty() || off - sizes.back().from > kSameSize) {
            sizes.push_back({off, place});
        } else if (distanceFromEdge(panel, beside, place) < distanceFromEdge(panel, beside, sizes.back().place)) {
            sizes.back().place = place;
        }
    }
    return sizes;
}

}  // namespace

std::vector<double> movedApart(const std::vector<double>& wanted, double gap) {
    // Less their least distances they have only to keep their order: neighbours out of order share their mean.
    struct Block {
        double sum = 0;
        std::size_t count = 0;
        [[nodiscard]] double mean() const { return sum / static_cast<double>(count); }
    };
    std::vector<Block> blocks;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        blocks.push_back({wanted[i] - static_cast<double>(i) * gap, 1});
        while (blocks.size() > 1 && blocks[blocks.size() - 2].mean() > blocks.back().mean()) {
            const Block last = blocks.back();
            blocks.pop_back();
            blocks.back().sum += last.sum;
            blocks.back().count += last.count;
        }
    }
    std::vector<double> moved;
    for (const Block& block : blocks) {
        for (std::size_t i = 0; i < block.count; ++i) moved.push_back(block.mean() + static_cast<double>(moved.size()) * gap);
    }
    return moved;
}

Label outsideNumber(const StepSheet& sheet, Point at, Point out, const std::string& number, const std::string& id) {
    const bool upright = std::abs(out.y) > std::abs(out.x);
    const bool reads = upright ? out.y > 0 : out.x > 0;  // away from the panel
    const Point drop = kHalfLetter * kNumberHeight * sheet.scale * (upright ? Point{1, 0} : Point{0, -1});
    return {Ink::Text, at + drop, number, kNumberHeight, reads ? Anchor::Left : Anchor::Right, upright ? 90.0 : 0.0, id};
}

void addRunningSizes(StepSheet& sheet, Edge from, Edge beside, std::vector<Point> places) {
    const Panel& panel = sheet.project.panel;
    const Lying& lying = sheet.lying;
    const Point step = lying.put(leftOf(edgeHeading(from)));              // away from the edge that is measured from
    const Point out = lying.put(-1.0 * leftOf(edgeHeading(beside)));
    const std::vector<Size> sizes = sizesOf(panel, from, beside, std::move(places));
    std::vector<double> wanted;
    for (const Size& size : sizes) wanted.push_back(size.from);
    const std::vector<double> stands = movedApart(wanted, kNumberStep * sheet.scale);
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        const Point place = lying.put(sizes[i].place);
        const Point edge = place + distanceFromEdge(panel, beside, sizes[i].place) * out;
        const Point bend = edge + kBend * sheet.scale * out;
        const Point number = edge + (stands[i] - sizes[i].from) * step + kNumberAway * sheet.scale * out;
        sheet.drawing.marks.emplace_back(Stroke{Ink::Dimension, place, bend, "hole"});
        sheet.drawing.marks.emplace_back(Stroke{Ink::Dimension, bend, number - sheet.scale * out, "hole"});
        sheet.drawing.marks.emplace_back(outsideNumber(sheet, number, out, drawnSetting(sizes[i].from, sheet.project.units), "hole"));
    }
}

}  // namespace kerfwall
