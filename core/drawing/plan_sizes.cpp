// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <set>

#include "core/drawing/drawn_size.h"
#include "core/drawing/plan_parts.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kAway = 11;       // from the opening to its first dimension line
constexpr double kStep = 7;        // from one dimension line to the next
constexpr double kApart = 6;       // dimension lines nearer than this would run into one another
constexpr double kFromLine = 2.5;  // ... and nearer to a layout line than this, into that
constexpr double kFromEdge = 3;    // a dimension line keeps this far inside the panel
constexpr int kMostSteps = 8;
constexpr std::size_t kMostSizes = 12;
constexpr double kSquareTo = 1e-9;  // sine of the angle under which a wall counts as along an edge

using Between = std::pair<Base, Base>;

/// What a dimension line keeps clear of, another one or a layout line: its place across, and its span.
struct Laid {
    bool level = false;
    double across = 0;
    double from = 0;
    double to = 0;
    double apart = kApart;  ///< mm on paper another one keeps from it
};

class SizeLayout {
  public:
    SizeLayout(Drawing& drawing, const Project& project, double scale)
        : m_drawing(drawing), m_project(project), m_scale(scale) {}

    void keepClearOf(const SolvedLine& line);
    void addSizes(const SolvedCutout& cutout);
    /// From the panel's left and bottom edge to the first walls of each cutout, where there is room.
    void addChains();

  private:
    struct Chain {
        bool level = false;
        double to = 0;      // from 0 to here
        double across = 0;  // of the size's own dimension line
        double foot = 0;    // where the extension line starts
        std::string id;
        LineId line;  // it ends on
    };

    void addSize(const SolvedCutout& cutout, const FacingSize& size);
    void addSquareSize(const SolvedCutout& cutout, const Wall& first, const Wall& second, bool level);
    void addAskewSize(const std::string& id, const Wall& first, const Wall& second, double size);
    void addSplayedSize(const std::string& id, const Wall& first, const Wall& second,
                        std::pair<double, double> ends);

    [[nodiscard]] bool isFree(const Laid& laid) const {
        return std::ranges::none_of(m_laid, [&](const Laid& other) {
            return other.level == laid.level &&
                   std::abs(other.across - laid.across) < other.apart * m_scale &&
                   other.from < laid.to - 1e-6 && laid.from < other.to - 1e-6;
        });
    }

    void add(Point from, Point to, double offset, double size, const std::string& id, const Between& between) {
        m_drawing.marks.emplace_back(Dimension{from, to, offset, drawnSize(size, m_project.units), id, between});
    }

    /// Level sizes run along +x, so that below is a negative offset; upright ones along +y, so that the
    /// right is a negative offset.
    void addLaid(const Laid& laid, double foot, const std::string& id, const Between& between) {
        m_laid.push_back(laid);
        if (laid.level) {
            add({laid.from, foot}, {laid.to, foot}, laid.across - foot, laid.to - laid.from, id, between);
        } else {
            add({foot, laid.from}, {foot, laid.to}, foot - laid.across, laid.to - laid.from, id, between);
        }
    }

    Drawing& m_drawing;
    const Project& m_project;
    double m_scale;
    std::vector<Laid> m_laid;
    std::vector<Chain> m_chains;
};

/// Below the opening or to its right, on the first free line inside the panel; else across its middle.
void SizeLayout::addSquareSize(const SolvedCutout& cutout, const Wall& first, const Wall& second,
                               bool level) {
    const auto along = [&](Point place) { return level ? place.x : place.y; };
    const auto across = [&](Point place) { return level ? place.y : place.x; };
    Laid laid{level, 0, std::min(along(first.from), along(second.from)),
              std::max(along(first.from), along(second.from))};
    const auto ends = {across(first.from), across(first.to), across(second.from), across(second.to)};
    const double foot = level ? std::min(ends) : std::max(ends);
    const double outwards = level ? -1 : 1;
    const bool firstIsLow = along(first.from) <= along(second.from);
    const Between between = firstIsLow ? Between{first.line, second.line} : Between{second.line, first.line};
    for (int step = 0; step < kMostSteps; ++step) {
        laid.across = foot + outwards * (kAway + kStep * step) * m_scale;
        const double room = level ? laid.across : m_project.panel.width - laid.across;
        if (room < kFromEdge * m_scale) break;
        if (!isFree(laid)) continue;
        addLaid(laid, foot, cutout.id, between);
        m_chains.push_back({level, laid.from, laid.across, foot, cutout.id, std::get<LineId>(between.first)});
        return;
    }
    laid.across = foot - outwards * std::min(kAway * m_scale, cutout.widest / 4);
    addLaid(laid, laid.across, cutout.id, between);
}

/// Askew but parallel: straight across from the middle of the shorter wall.
void SizeLayout::addAskewSize(const std::string& id, const Wall& first, const Wall& second, double size) {
    const bool firstShorter = distance(first.from, first.to) < distance(second.from, second.to);
    const Wall& shorter = firstShorter ? first : second;
    const Wall& other = firstShorter ? second : first;
    const Point middle = 0.5 * (shorter.from + shorter.to);
    const Point along = unit(other.to - other.from);
    add(middle, other.from + dot(along, middle - other.from) * along, 0, size, id, {shorter.line, other.line});
}

/// Splayed: square to the first wall at both ends of the stretch where the walls face each other, the
/// dimension lines drawn a little inside.
void SizeLayout::addSplayedSize(const std::string& id, const Wall& first, const Wall& second,
                                std::pair<double, double> ends) {
    const Point along = unit(first.to - first.from);
    const double whole = distance(first.from, first.to);
    const double one = dot(second.from - first.from, along);
    const double other = dot(second.to - first.from, along);
    const double low = std::max(0.0, std::min(one, other));
    const double high = std::min(whole, std::max(one, other));
    const double in = std::min(4 * m_scale, (high - low) / 8);
    const Point a = first.from + low * along;
    const Point b = first.from + high * along;
    add(a, a + ends.first * leftOf(along), -in, ends.first, id, {first.line, second.line});
    add(b, b + ends.second * leftOf(along), in, ends.second, id, {first.line, second.line});
}

void SizeLayout::addSize(const SolvedCutout& cutout, const FacingSize& size) {
    const Wall& first = cutout.walls[size.firstWall];
    const Wall& second = cutout.walls[size.secondWall];
    const Point along = unit(first.to - first.from);
    if (size.atEnds) {
        addSplayedSize(cutout.id, first, second, *size.atEnds);
    } else if (std::abs(along.x) < kSquareTo) {
        addSquareSize(cutout, first, second, true);
    } else if (std::abs(along.y) < kSquareTo) {
        addSquareSize(cutout, first, second, false);
    } else {
        addAskewSize(cutout.id, first, second, size.distance);
    }
}

void SizeLayout::keepClearOf(const SolvedLine& line) {
    const Point along = unit(line.to - line.from);
    if (std::abs(along.y) < kSquareTo) {
        m_laid.push_back({true, line.from.y, 0, m_project.panel.width, kFromLine});
    } else if (std::abs(along.x) < kSquareTo) {
        m_laid.push_back({false, line.from.x, 0, m_project.panel.height, kFromLine});
    }
}

void SizeLayout::addSizes(const SolvedCutout& cutout) {
    std::set<std::pair<LineId, LineId>> shown;  // walls of the same two lines say the same
    for (const FacingSize& size : cutout.sizes) {
        if (shown.size() >= kMostSizes) break;
        if (size.firstWall >= cutout.walls.size() || size.secondWall >= cutout.walls.size()) continue;
        if (!shown.insert(std::minmax(size.first, size.second)).second) continue;
        addSize(cutout, size);
    }
}

void SizeLayout::addChains() {
    std::set<std::pair<bool, double>> shown;
    for (const Chain& chain : m_chains) {
        const Laid laid{chain.level, chain.across, 0, chain.to};
        if (chain.to <= 0 || !isFree(laid) || !shown.emplace(chain.level, chain.to).second) continue;
        const Edge edge = chain.level ? Edge::Left : Edge::Bottom;
        addLaid(laid, chain.foot, chain.id, {edge, chain.line});
    }
}

}  // namespace

void addSizes(Drawing& drawing, const Project& project, const Solved& solved, const PlanLayers& layers) {
    SizeLayout layout(drawing, project, layers.markScale);
    for (const SolvedLine& line : solved.lines) layout.keepClearOf(line);
    for (const SolvedCutout& cutout : solved.cutouts) layout.addSizes(cutout);
    layout.addChains();
}

std::vector<Dimension> planSizes(const Project& project, const Solved& solved, const PlanLayers& layers) {
    Drawing drawing;
    addSizes(drawing, project, solved, layers);
    std::vector<Dimension> sizes;
    for (const Mark& mark : drawing.marks) {
        if (const auto* size = std::get_if<Dimension>(&mark)) sizes.push_back(*size);
    }
    return sizes;
}

}  // namespace kerfwall
