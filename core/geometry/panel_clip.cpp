// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/panel_clip.h"

#include <algorithm>
#include <array>
#include <limits>

#include "core/geometry/edge_place.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

constexpr double kOnEdge = 10 * kBite;
constexpr double kSamePlace = kOnEdge;  ///< ends on the border this close are one place

/// Places on the panel's border as distances round it, anticlockwise from the bottom-left corner.
class PanelBorder {
  public:
    explicit PanelBorder(const Panel& panel) : m_width(panel.width), m_height(panel.height) {}

    [[nodiscard]] double whole() const { return 2 * (m_width + m_height); }
    [[nodiscard]] std::array<double, 5> corners() const {
        return {0, m_width, m_width + m_height, 2 * m_width + m_height, whole()};
    }
    [[nodiscard]] double placeOf(Point p) const {
        const std::array<double, 4> off{std::abs(p.y), std::abs(p.x - m_width), std::abs(p.y - m_height), std::abs(p.x)};
        const auto nearest = std::ranges::min_element(off) - off.begin();
        switch (nearest) {
            case 0: return std::clamp(p.x, 0.0, m_width);
            case 1: return m_width + std::clamp(p.y, 0.0, m_height);
            case 2: return m_width + m_height + m_width - std::clamp(p.x, 0.0, m_width);
            default: return 2 * m_width + m_height + m_height - std::clamp(p.y, 0.0, m_height);
        }
    }
    [[nodiscard]] Point at(double place) const {
        const auto c = corners();
        if (place <= c[1]) return {place, 0};
        if (place <= c[2]) return {m_width, place - c[1]};
        if (place <= c[3]) return {c[3] - place, m_height};
        return {0, c[4] - place};
    }
    [[nodiscard]] Point headingAt(double place) const {
        const auto c = corners();
        std::size_t edge = 0;
        while (edge < 3 && place >= c[edge + 1]) ++edge;
        return edgeHeading(kEdges[edge]);
    }
    /// Adds the way along the border from one place on, `ahead` mm anticlockwise, to a loop.
    void follow(double from, double ahead, ClippedLoop& loop) const {
        const auto c = corners();
        while (ahead > kOnEdge) {
            if (from >= c[4] - kOnEdge) from = 0;
            std::size_t edge = 0;
            while (from >= c[edge + 1] - kOnEdge) ++edge;
            const double to = std::min(from + ahead, c[edge + 1]);
            loop.curves.push_back(straight(at(from), to >= c[4] ? Point{0, 0} : at(to)));
            loop.edges.push_back(kEdges[edge]);
            ahead -= to - from;
            from = to;
        }
    }

  private:
    double m_width;
    double m_height;
};

/// A run of curves on the panel from border to border.
struct Chain {
    std::vector<Curve> curves;
    double starts = 0;
    double ends = 0;
};

Point settled(Point p, const Panel& panel) {
    if (std::abs(p.x) < kOnEdge) p.x = 0;
    if (std::abs(p.y) < kOnEdge) p.y = 0;
    if (std::abs(p.x - panel.width) < kOnEdge) p.x = panel.width;
    if (std::abs(p.y - panel.height) < kOnEdge) p.y = panel.height;
    return p;
}

/// The stretches of a curve that lie on the panel, and whether they reach its two ends.
std::vector<std::pair<double, double>> stretchesOn(const Panel& panel, const Curve& curve) {
    std::vector<double> marks{0, curve.size};
    meetLine(curve, {0, 0}, {1, 0}, marks);
    meetLine(curve, {panel.width, 0}, {0, 1}, marks);
    meetLine(curve, {panel.width, panel.height}, {-1, 0}, marks);
    meetLine(curve, {0, panel.height}, {0, -1}, marks);
    std::ranges::sort(marks);
    std::vector<std::pair<double, double>> kept;
    for (std::size_t i = 0; i + 1 < marks.size(); ++i) {
        if (marks[i + 1] - marks[i] <= 0) continue;
        if (!isOnPanel(panel, curve.at((marks[i] + marks[i + 1]) / 2), kOnEdge)) continue;
        if (!kept.empty() && kept.back().second == marks[i]) {
            kept.back().second = marks[i + 1];
        } else {
            kept.emplace_back(marks[i], marks[i + 1]);
        }
    }
    return kept;
}

/// Splits a loop into chains on the panel; true where the whole loop lies on it.
bool splitToChains(const Rim& rim, const std::vector<std::size_t>& loop, const Panel& panel,
                   std::vector<Chain>& chains, ClippedLoop& whole) {
    struct Piece {
        Curve curve;
        bool fromBefore;  ///< goes on from the piece before it
    };
    std::vector<Piece> pieces;
    bool open = true;  // the last stretch reached its curve's end
    bool cut = false;
    for (const std::size_t i : loop) {
        const Curve& curve = rim.curves[i];
        const auto kept = stretchesOn(panel, curve);
        // A run that only touches the border parts there: what lies on either side may be two regions.
        const bool touches = !isOnPanel(panel, curve.from, kOnEdge);
        cut = cut || touches || kept.size() != 1 || kept.front() != std::pair{0.0, curve.size};
        for (const auto& [a, b] : kept) pieces.push_back({curve.part(a, b), open && a == 0 && !touches});
        open = !kept.empty() && kept.back().second == curve.size;
    }
    if (!cut) {
        for (Piece& piece : pieces) {
            whole.curves.push_back(piece.curve);
            whole.edges.emplace_back();
        }
        return true;
    }
    if (pieces.empty()) return false;
    // Begin at a piece that does not go on from another.
    if (!open) pieces.front().fromBefore = false;
    const auto begin = std::ranges::find_if(pieces, [](const Piece& p) { return !p.fromBefore; });
    if (begin != pieces.end()) std::ranges::rotate(pieces, begin);
    for (const Piece& piece : pieces) {
        if (!piece.fromBefore || chains.empty()) chains.emplace_back();
        chains.back().curves.push_back(piece.curve);
    }
    return false;
}

/// How far along the border it is from where one chain ends to where another begins. Where both are one place the
/// region either touches the border there and goes on at once, or two regions touch there in a point, and it is a
/// whole turn: the panel inwards of the edge, from its heading round, is then the one's, the wood's, and the other's.
double wayAhead(const Chain& chain, const Chain& other, const PanelBorder& border) {
    double ahead = other.starts - chain.ends;
    if (ahead > border.whole() / 2) ahead -= border.whole();
    if (ahead < -border.whole() / 2) ahead += border.whole();
    if (std::abs(ahead) < kSamePlace) {
        const Point in = chain.curves.back().tangentAt(chain.curves.back().size);
        const Point out = other.curves.front().tangentAt(0);
        const double turn = cross(in, out);
        constexpr double kStraightOn = 1e-9;
        const bool grazes = std::abs(turn) < kStraightOn && dot(in, out) > 0;
        const bool goesOn = grazes ? dot(in, border.headingAt(chain.ends)) > 0 : turn > 0;
        return goesOn ? 0 : border.whole();
    }
    return ahead < 0 ? ahead + border.whole() : ahead;
}

bool isInside(const Rim& rim, Point place) {
    int turns = 0;
    for (const auto& run : rim.closedRuns()) turns += windingRound(run, place);
    return turns != 0;
}

}  // namespace

bool isOnPanel(const Panel& panel, Point place, double margin) {
    return place.x > margin && place.x < panel.width - margin && place.y > margin && place.y < panel.height - margin;
}

std::vector<ClippedLoop> clipToPanel(const Rim& rim, const Panel& panel) {
    std::vector<ClippedLoop> clipped;
    std::vector<Chain> chains;
    for (const auto& loop : rim.loops()) {
        ClippedLoop whole;
        if (splitToChains(rim, loop, panel, chains, whole)) clipped.push_back(std::move(whole));
    }
    const PanelBorder border(panel);
    for (Chain& chain : chains) {
        chain.curves.front().from = settled(chain.curves.front().from, panel);
        chain.curves.back().to = settled(chain.curves.back().to, panel);
        chain.starts = border.placeOf(chain.curves.front().from);
        chain.ends = border.placeOf(chain.curves.back().to);
    }
    if (chains.empty() && isInside(rim, border.at(0))) {
        clipped.emplace_back();
        border.follow(0, border.whole(), clipped.back());
    }
    std::vector<bool> used(chains.size(), false);
    for (std::size_t first = 0; first < chains.size(); ++first) {
        if (used[first]) continue;
        ClippedLoop loop;
        std::size_t at = first;
        while (!used[at]) {
            used[at] = true;
            for (const Curve& curve : chains[at].curves) {
                loop.curves.push_back(curve);
                loop.edges.emplace_back();
            }
            std::size_t after = first;
            double shortest = std::numeric_limits<double>::infinity();
            for (std::size_t other = 0; other < chains.size(); ++other) {
                if (used[other] && other != first) continue;
                const double ahead = wayAhead(chains[at], chains[other], border);
                if (ahead < shortest) {
                    shortest = ahead;
                    after = other;
                }
            }
            border.follow(chains[at].ends, std::max(0.0, shortest), loop);
            at = after;
        }
        clipped.push_back(std::move(loop));
    }
    return clipped;
}

std::vector<Point> touchesOf(const Rim& rim, const Panel& panel) {
    constexpr double kBeside = 10 * kDoubt;  // mm along the rim from the place that is looked at
    std::vector<Point> touches;
    for (const auto& loop : rim.closedRuns()) {
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Curve& arriving = loop[i];
            const Curve& leaving = loop[(i + 1) % loop.size()];
            if (isOnPanel(panel, leaving.from, kDoubt) || !isOnPanel(panel, leaving.from, -kDoubt)) continue;
            const auto beside = [](const Curve& curve) { return curve.size * std::min(0.5, kBeside / curve.lengthInMm()); };
            if (isOnPanel(panel, arriving.at(arriving.size - beside(arriving)), kOnEdge) &&
                isOnPanel(panel, leaving.at(beside(leaving)), kOnEdge)) {
                touches.push_back(leaving.from);
            }
        }
    }
    return touches;
}

std::vector<std::vector<std::size_t>> regionsOf(const std::vector<std::vector<Curve>>& loops) {
    std::vector<double> areas;
    for (const auto& loop : loops) areas.push_back(signedArea(loop));
    std::vector<std::vector<std::size_t>> regions;
    for (std::size_t i = 0; i < loops.size(); ++i) {
        if (areas[i] > kDust) regions.push_back({i});
    }
    for (std::size_t i = 0; i < loops.size(); ++i) {
        if (areas[i] > -kDust) continue;
        const Curve& any = loops[i].front();
        const Point place = any.at(any.size / 2);
        std::vector<std::size_t>* home = nullptr;
        for (auto& region : regions) {
            if (areas[region.front()] < -areas[i] || windingRound(loops[region.front()], place) == 0) continue;
            if (!home || areas[region.front()] < areas[home->front()]) home = &region;
        }
        if (home) home->push_back(i);
    }
    return regions;
}

bool isOver(const std::vector<std::vector<Curve>>& loops, const std::vector<std::size_t>& region,
            const std::vector<ArrangedFace>& faces) {
    for (const ArrangedFace& face : faces) {
        Point middle;
        for (const Point& corner : face.corners) middle = middle + (1.0 / static_cast<double>(face.corners.size())) * corner;
        int turns = 0;
        for (const std::size_t i : region) turns += windingRound(loops[i], middle);
        if (turns != 0) return true;
        for (const std::size_t i : region) {
            for (const Curve& curve : loops[i]) {
                std::vector<double> marks{0, curve.size};
                for (const HalfPlane& half : face.bounds) meetLine(curve, half.origin, half.direction, marks);
                std::ranges::sort(marks);
                for (std::size_t m = 0; m + 1 < marks.size(); ++m) {
                    const Point place = curve.at((marks[m] + marks[m + 1]) / 2);
                    if (isWithin(face.bounds, place, kOnEdge)) return true;
                }
            }
        }
    }
    return false;
}

}  // namespace kerfwall
