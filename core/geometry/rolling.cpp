// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/rolling.h"

#include <algorithm>
#include <numbers>
#include <optional>

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

/// The curves of a rim in square cells, to find those near a place at nearly constant cost.
class Neighbourhood {
  public:
    Neighbourhood(const std::vector<Curve>& curves, double cell) : m_seen(curves.size(), 0) {
        m_boxes.reserve(curves.size());
        for (const Curve& curve : curves) m_boxes.push_back(curve.bounds());
        Box all = m_boxes.empty() ? Box{} : m_boxes.front();
        for (const Box& box : m_boxes) {
            all.low = {std::min(all.low.x, box.low.x), std::min(all.low.y, box.low.y)};
            all.high = {std::max(all.high.x, box.high.x), std::max(all.high.y, box.high.y)};
        }
        const double mostCells = std::clamp(2 * std::sqrt(static_cast<double>(curves.size())), 128.0, 512.0);
        const double span = std::max(all.high.x - all.low.x, all.high.y - all.low.y);
        m_origin = all.low;
        m_cell = std::max(cell, span / mostCells);
        m_columns = column(all.high.x) + 1;
        m_rows = row(all.high.y) + 1;
        m_cells.resize(static_cast<std::size_t>(m_columns) * static_cast<std::size_t>(m_rows));
        for (std::size_t i = 0; i < curves.size(); ++i) {
            forCells(m_boxes[i], [&](std::vector<std::size_t>& here) { here.push_back(i); });
        }
    }

    /// Calls `visit(index)` for every curve whose bounds come within `reach` of `box`, as long as it gives true.
    template <class Visit>
    void around(const Box& box, double reach, const Visit& visit) {
        ++m_round;
        const Box wide{{box.low.x - reach, box.low.y - reach}, {box.high.x + reach, box.high.y + reach}};
        bool more = true;
        forCells(wide, [&](const std::vector<std::size_t>& here) {
            for (std::size_t n = 0; n < here.size() && more; ++n) {
                const std::size_t i = here[n];
                if (m_seen[i] == m_round) continue;
                m_seen[i] = m_round;
                const Box& other = m_boxes[i];
                if (other.high.x < wide.low.x || other.low.x > wide.high.x || other.high.y < wide.low.y ||
                    other.low.y > wide.high.y) {
                    continue;
                }
                more = visit(i);
            }
        });
    }

  private:
    [[nodiscard]] int column(double x) const { return static_cast<int>(std::floor((x - m_origin.x) / m_cell)); }
    [[nodiscard]] int row(double y) const { return static_cast<int>(std::floor((y - m_origin.y) / m_cell)); }
    template <class Do>
    void forCells(const Box& box, const Do& act) {
        const int right = std::min(column(box.high.x), m_columns - 1);
        const int top = std::min(row(box.high.y), m_rows - 1);
        for (int y = std::max(row(box.low.y), 0); y <= top; ++y) {
            for (int x = std::max(column(box.low.x), 0); x <= right; ++x) {
                act(m_cells[static_cast<std::size_t>(y) * static_cast<std::size_t>(m_columns) +
                            static_cast<std::size_t>(x)]);
            }
        }
    }

    std::vector<Box> m_boxes;
    std::vector<std::vector<std::size_t>> m_cells;
    std::vector<unsigned> m_seen;
    unsigned m_round = 0;
    Point m_origin;
    double m_cell = 1;
    int m_columns = 1;
    int m_rows = 1;
};

/// The side's own track: the curve shifted to its free side. None where an arc is too small to roll in.
std::optional<Curve> shifted(const Curve& side, double radius) {
    if (!side.isArc) {
        const Point off = radius * leftOf(side.tangentAt(0));
        Curve curve = side;
        curve.from = side.from + off;
        curve.to = side.to + off;
        return curve;
    }
    const double wide = side.anticlockwise ? side.radius - radius : side.radius + radius;
    if (wide < kDoubtfulRadius) return std::nullopt;
    Curve curve = side;
    curve.radius = wide;
    curve.from = side.centre + (wide / side.radius) * (side.from - side.centre);
    curve.to = side.centre + (wide / side.radius) * (side.to - side.centre);
    return curve;
}

/// The track about the lip where `arriving` ends and `leaving` begins; none where the free side is hollow.
std::optional<Curve> aboutLip(const Curve& arriving, const Curve& leaving, double radius) {
    const Point in = arriving.tangentAt(arriving.size);
    const Point out = leaving.tangentAt(0);
    const double turn = std::atan2(cross(in, out), dot(in, out));
    constexpr double kStraightOn = 1e-12;
    if (turn > -kStraightOn) {
        const bool doublesBack = turn > std::numbers::pi - kStraightOn;
        if (!doublesBack) return std::nullopt;
    }
    const Point lip = 0.5 * (arriving.to + leaving.from);
    const Point start = leftOf(in);
    return arc(lip, radius, std::atan2(start.y, start.x), std::abs(turn), false);
}

/// What of a straight track a straight wall bites can often be told from the ends alone: places nearer than
/// the radius to the wall are convex, so both ends inside are all inside.
enum class Bite { None, All, Some };

Bite biteOfStraight(const Curve& track, const Curve& wall, double radius) {
    const double from = distanceTo(wall, track.from);
    const double to = distanceTo(wall, track.to);
    if (from < radius - kBite && to < radius - kBite) return Bite::All;
    if (std::min(from, to) < radius) return Bite::Some;
    if (std::min(distanceTo(track, wall.from), distanceTo(track, wall.to)) < radius) return Bite::Some;
    const Point along = track.to - track.from;
    const Point side = wall.to - wall.from;
    const bool apart = cross(along, wall.from - track.from) * cross(along, wall.to - track.from) > 0 ||
                       cross(side, track.from - wall.from) * cross(side, track.to - wall.from) > 0;
    return apart ? Bite::None : Bite::Some;
}

/// Takes out of `spans` what of `track` lies nearer than `radius` to `wall`.
void takeBitten(Spans& spans, const Curve& track, const Curve& wall, double radius, std::vector<double>& marks) {
    if (!track.isArc && !wall.isArc) {
        const Bite bite = biteOfStraight(track, wall, radius);
        if (bite == Bite::All) spans.clear();
        if (bite != Bite::Some) return;
    }
    marks.clear();
    meetCircle(track, wall.from, radius, marks);
    meetCircle(track, wall.to, radius, marks);
    if (wall.isArc) {
        meetCircle(track, wall.centre, wall.radius + radius, marks);
        if (wall.radius != radius) meetCircle(track, wall.centre, std::abs(wall.radius - radius), marks);
        for (const Point end : {wall.from, wall.to}) {
            meetLine(track, wall.centre, unit(end - wall.centre), marks);
        }
    } else {
        const Point along = wall.tangentAt(0);
        const Point off = radius * leftOf(along);
        meetLine(track, wall.from + off, along, marks);
        meetLine(track, wall.from - off, along, marks);
        meetLine(track, wall.from, leftOf(along), marks);
        meetLine(track, wall.to, leftOf(along), marks);
    }
    marks.push_back(0);
    marks.push_back(track.size);
    std::ranges::sort(marks);
    for (std::size_t i = 0; i + 1 < marks.size(); ++i) {
        if (marks[i] == marks[i + 1]) continue;
        const Point middle = track.at((marks[i] + marks[i + 1]) / 2);
        if (distanceTo(wall, middle) < radius - kBite) takeOut(spans, marks[i], marks[i + 1]);
    }
}

}  // namespace

Track roll(const Rim& rim, double radius) {
    Neighbourhood neighbours(rim.curves, 2 * radius);
    std::vector<Curve> tracks;
    std::vector<Track::Rest> rests;
    std::vector<double> marks;
    std::vector<std::pair<double, std::size_t>> walls;
    const auto keep = [&](const Curve& track, Track::Rest rest) {
        // Nearest first: most tracks are wholly bitten by a wall or two, and the rest need not be looked at. The
        // middle of the track is at most half its length from any of its places.
        const Point middle = track.at(track.size / 2);
        const double reach = radius + track.lengthInMm() / 2;
        walls.clear();
        bool gone = false;
        neighbours.around(track.bounds(), radius, [&](std::size_t i) {
            if (!rest.onLip && i == rest.curve) return true;
            const Curve& wall = rim.curves[i];
            const double away = distanceTo(wall, middle);
            if (away < reach) walls.emplace_back(away, i);
            gone = away < radius - kBite && !track.isArc && !wall.isArc &&
                   biteOfStraight(track, wall, radius) == Bite::All;
            return !gone;
        });
        if (gone) return;
        std::ranges::sort(walls);
        Spans spans{{0, track.size}};
        for (std::size_t n = 0; n < walls.size() && !spans.empty(); ++n) {
            takeBitten(spans, track, rim.curves[walls[n].second], radius, marks);
        }
        for (const auto& [a, b] : spans) {
            Curve piece = track.part(a, b);
            if (piece.lengthInMm() < kBite) continue;
            piece.tag = rests.size();
            rests.push_back(rest);
            tracks.push_back(piece);
        }
    };
    for (std::size_t i = 0; i < rim.curves.size(); ++i) {
        if (const auto side = shifted(rim.curves[i], radius)) keep(*side, {i, false});
        if (rim.next[i] == Rim::kOpenEnd) continue;
        if (const auto lip = aboutLip(rim.curves[i], rim.curves[rim.next[i]], radius)) keep(*lip, {i, true});
    }
    Track track;
    track.rim = joinToRim(std::move(tracks));
    track.rests = std::move(rests);
    for (const std::size_t end : track.rim.openEnds()) {
        track.gaps.push_back(track.rim.curves[end].to);
    }
    return track;
}

}  // namespace kerfwall
