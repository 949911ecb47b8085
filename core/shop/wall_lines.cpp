// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/wall_lines.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <utility>

#include "core/geometry/angle.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/moving.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

constexpr double kOnGrid = 2e-9;         // mm: two steps of the grid
constexpr double kSameAngle = 1e-8;      // degrees; over 3 m of panel less than kDoubt
constexpr double kSetAngle = 1e-7;       // degrees: an angle meant by its corners on the grid, 0.3 m apart
constexpr double kAngleGrid = 1e-9;      // degrees

// Degrees by which the wall's line is turned from that edge, over -90 to 90.
double turnFrom(Edge edge, const WallToLay& wall) {
    const Point heading = edgeHeading(edge);
    const Point along = wall.q - wall.p;
    double turn = degrees(std::atan2(cross(heading, along), dot(heading, along)));
    if (turn > 90) turn -= 180;
    if (turn <= -90) turn += 180;
    return turn;
}

class Layer {
public:
    Layer(Project& project, const Solved& solved, bool symmetric, int highest)
        : m_project(project), m_solved(solved), m_symmetric(symmetric), m_highest(highest) {}

    LineId lay(const WallToLay& wall, double middle) {
        const auto there = std::ranges::find_if(m_solved.lines, [&](const SolvedLine& line) { return liesAt(line, wall); });
        if (there != m_solved.lines.end()) return there->id;
        for (const auto& [twin, id] : m_laid) {
            if (isOnLine(twin, wall)) return id;
        }
        const LineId id = add(placeOf(wall, middle), true);
        m_laid.emplace_back(wall, id);
        return id;
    }

private:
    static bool isOnLine(const WallToLay& one, const WallToLay& other) {
        const Point along = unit(one.q - one.p);
        return std::abs(cross(along, other.p - one.p)) < kOnGrid && std::abs(cross(along, other.q - one.p)) < kOnGrid;
    }

    Edge uprightEdge() const { return edgeFor(false); }

    // Of the two edges to measure from, the one that runs level, or upright.
    Edge edgeFor(bool level) const {
        const Edge reference = m_project.panel.referenceEdge;
        const bool referenceIsLevel = reference == Edge::Bottom || reference == Edge::Top;
        return referenceIsLevel == level ? reference : squareEdge(m_project.panel);
    }

    Place placeOf(const WallToLay& wall, double middle) {
        if (isLevel(wall) || isUpright(wall)) {
            const Edge from = edgeFor(isLevel(wall));
            return ByOffset{from, onGrid(distanceFromEdge(m_project.panel, from, wall.p))};
        }
        if (const auto mirrored = mirrorOf(wall, middle)) return *mirrored;
        return slanting(wall);
    }

    std::optional<Place> mirrorOf(const WallToLay& wall, double middle) {
        const Panel& panel = m_project.panel;
        const auto upright = [](double x) { return [x](Point place) { return Point{2 * x - place.x, place.y}; }; };
        const auto level = [&](Point place) { return Point{place.x, panel.height - place.y}; };
        if (const auto id = twinOf(wall, upright(panel.width / 2))) return ByMirror{*id, Centre::Upright};
        if (const auto id = twinOf(wall, level)) return ByMirror{*id, Centre::Level};
        if (!m_symmetric) return std::nullopt;
        const auto id = twinOf(wall, upright(middle));
        if (!id) return std::nullopt;
        return ByMirror{*id, centreLine(middle)};
    }

    template <class Mirror>
    std::optional<LineId> twinOf(const WallToLay& wall, const Mirror& mirror) const {
        for (const auto& [laid, id] : m_laid) {
            if (distance(mirror(laid.p), wall.q) < kOnGrid && distance(mirror(laid.q), wall.p) < kOnGrid) return id;
        }
        return std::nullopt;
    }

    LineId centreLine(double middle) {
        if (m_centre.empty()) {
            const Edge from = uprightEdge();
            m_centre = add(ByOffset{from, onGrid(distanceFromEdge(m_project.panel, from, {middle, 0}))}, false);
        }
        return m_centre;
    }

    Place slanting(const WallToLay& wall) const {
        Edge from = m_project.panel.referenceEdge;
        const Edge square = squareEdge(m_project.panel);
        if (std::abs(turnFrom(square, wall)) < std::abs(turnFrom(from, wall)) - kSameAngle) from = square;
        const double turn = turnFrom(from, wall);
        const double half = std::round(2 * turn) / 2;
        const bool isHalf = std::abs(turn - half) < (m_symmetric ? kSetAngle : kSameAngle);
        if (!isHalf && !m_symmetric) return ByPoints{wall.p, wall.q};
        const Point through = liesOnPanel(m_project.panel, wall.p) ? wall.p : wall.q;
        return ByAngle{from, isHalf ? half : std::round(turn / kAngleGrid) * kAngleGrid, through};
    }

    LineId add(Place place, bool cut) {
        LayoutLine line;
        line.id = nextLineId(m_project, m_highest);
        line.place = std::move(place);
        line.cut = cut;
        m_project.lines.push_back(line);
        return line.id;
    }

    Project& m_project;
    const Solved& m_solved;
    bool m_symmetric;
    int m_highest;
    std::vector<std::pair<WallToLay, LineId>> m_laid;
    LineId m_centre;
};

double middleOf(const std::vector<std::optional<WallToLay>>& walls) {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    for (const auto& wall : walls) {
        if (!wall) continue;
        low = std::min({low, wall->p.x, wall->q.x});
        high = std::max({high, wall->p.x, wall->q.x});
    }
    return onGrid((low + high) / 2);
}

}  // namespace

double onGrid(double mm) { return std::round(mm * 1e9) / 1e9; }
Point onGrid(Point place) { return {onGrid(place.x), onGrid(place.y)}; }

bool isLevel(const WallToLay& wall) { return std::abs(wall.p.y - wall.q.y) < kOnGrid; }
bool isUpright(const WallToLay& wall) { return std::abs(wall.p.x - wall.q.x) < kOnGrid; }

bool liesAt(const SolvedLine& line, const WallToLay& wall) {
    const auto off = [](Point a, Point b, Point place) { return std::abs(cross(unit(b - a), place - a)); };
    return line.cut && off(line.from, line.to, wall.p) < kDoubt && off(line.from, line.to, wall.q) < kDoubt &&
           off(wall.p, wall.q, line.from) < kDoubt && off(wall.p, wall.q, line.to) < kDoubt;
}

Side wasteSide(const SolvedLine& line, const WallToLay& wall) {
    return dot(line.to - line.from, wall.q - wall.p) > 0 ? Side::Left : Side::Right;
}

std::vector<std::size_t> layingOrder(const std::vector<std::optional<WallToLay>>& walls) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < walls.size(); ++i) {
        if (walls[i]) order.push_back(i);
    }
    const auto rank = [&](std::size_t i) {
        const WallToLay& wall = *walls[i];
        if (isLevel(wall)) return std::tuple(0, wall.p.y);
        return isUpright(wall) ? std::tuple(1, wall.p.x) : std::tuple(2, static_cast<double>(i));
    };
    std::ranges::stable_sort(order, {}, rank);
    return order;
}

std::vector<LineId> layWalls(Project& project, const Solved& solved, const std::vector<std::optional<WallToLay>>& walls,
                             bool symmetric, int highest) {
    Layer layer(project, solved, symmetric, highest);
    std::vector<LineId> ids(walls.size());
    const double middle = middleOf(walls);
    for (const std::size_t i : layingOrder(walls)) ids[i] = layer.lay(*walls[i], middle);
    return ids;
}

}  // namespace kerfwall
