// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/bites.h"

#include <algorithm>
#include <numbers>

#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

constexpr double kRadian = std::numbers::pi / 180;

Curve curveOf(const OutlinePiece& piece) {
    return piece.isArc ? arcThrough(piece.centre, piece.radius, piece.from, piece.to, piece.turn == Turn::Left)
                       : straight(piece.from, piece.to);
}

/// The drawn cutout's border, to ask how far outside it a place lies.
class DrawnBorder {
  public:
    explicit DrawnBorder(const Outline& drawn) {
        for (const OutlineLoop& loop : drawn.loops) {
            Rim rim;
            for (const OutlinePiece& piece : loop) {
                rim.next.push_back((rim.curves.size() + 1) % loop.size());
                rim.curves.push_back(straight(piece.from, piece.to));
            }
            m_whole.push_back(rim.loops().empty() ? std::vector<std::size_t>{} : rim.loops().front());
            m_loops.push_back(std::move(rim));
        }
    }
    [[nodiscard]] double distanceOutside(Point place) const {
        double nearest = 1e300;
        for (const Rim& rim : m_loops) {
            for (const Curve& side : rim.curves) nearest = std::min(nearest, distanceTo(side, place));
        }
        if (nearest < kBite) return 0;
        int turns = 0;
        for (std::size_t i = 0; i < m_loops.size(); ++i) turns += windingRound(m_loops[i], m_whole[i], place);
        return turns > 0 ? 0 : nearest;
    }

  private:
    std::vector<Rim> m_loops;
    std::vector<std::vector<std::size_t>> m_whole;
};

struct Deepest {
    double depth = 0;
    Point at;
};

/// The place of a stretch of curve that lies farthest outside the drawn cutout.
Deepest deepestOn(const Curve& curve, double from, double to, const DrawnBorder& border) {
    constexpr int kSamples = 32;
    const auto depthAt = [&](double t) { return border.distanceOutside(curve.at(t)); };
    const double stride = (to - from) / kSamples;
    int best = 0;
    double most = -1;
    for (int i = 0; i <= kSamples; ++i) {
        if (const double depth = depthAt(from + i * stride); depth > most) {
            most = depth;
            best = i;
        }
    }
    double low = from + std::max(best - 1, 0) * stride;
    double high = from + std::min(best + 1, kSamples) * stride;
    for (int i = 0; i < 80 && high - low > 0; ++i) {
        const double a = low + (high - low) / 3;
        const double b = high - (high - low) / 3;
        if (depthAt(a) < depthAt(b)) low = a;
        else high = b;
    }
    const double at = (low + high) / 2;
    const double there = depthAt(at);
    return there >= most ? Deepest{there, curve.at(at)} : Deepest{most, curve.at(from + best * stride)};
}

bool isOnKerf(const VoidSide& side) {
    return side.kind == VoidSide::Kind::Mouth || side.kind == VoidSide::Kind::FarSide ||
           side.kind == VoidSide::Kind::KerfEnd;
}

/// A piece that can lie outside the drawn cutout at all: not a wall, nor a round between two walls.
bool mayBite(const PieceSource& source) {
    if (source.contacts.empty()) return false;
    return std::ranges::any_of(source.contacts, [](const Contact& contact) {
        return contact.onLip || (contact.side.kind != VoidSide::Kind::Wall && contact.side.kind != VoidSide::Kind::Bore);
    });
}

class CornerReader {
  public:
    CornerReader(const SolvedCutout& cutout, const Opening& opening, const Project& project, const Arranged& arranged,
                 const std::vector<LaidKerf>& kerfs)
        : m_cutout(cutout), m_opening(opening), m_project(project), m_arranged(arranged), m_kerfs(kerfs),
          m_border(cutout.drawn) {}

    [[nodiscard]] const LineId& idOf(std::size_t line) const { return m_project.lines[m_arranged.lines[line].index].id; }
    [[nodiscard]] const DrawnBorder& border() const { return m_border; }

    /// Width of the line's kerf on the side that meets this corner's waste; 0 where it has none.
    [[nodiscard]] double kerfWidth(const LineId& line) const {
        double width = 0;
        for (const LaidKerf& kerf : m_kerfs) {
            if (idOf(kerf.line) == line) width = std::max(width, kerf.kerf.width);
        }
        return width;
    }

    /// The greatest distance from the drawn cutout of a place of the opening within `reach` of `centre`.
    [[nodiscard]] double step(Point centre, double reach) const {
        double most = 0;
        const auto& loops = m_opening.outline.loops;
        for (std::size_t l = 0; l < loops.size(); ++l) {
            for (std::size_t p = 0; p < loops[l].size(); ++p) {
                if (!mayBite(m_opening.sources[l][p])) continue;
                most = std::max(most, stepOf(loops[l][p], centre, reach));
            }
        }
        if (most > 0) most = std::max(most, onReach(centre, reach));
        return most;
    }

    [[nodiscard]] Regime regime(const Corner& corner, double bitRadius) const {
        const double first = kerfWidth(corner.first);
        const double second = kerfWidth(corner.second);
        if (std::max(first, second) >= 2 * bitRadius) return Regime::FallsIn;
        bool sound = false;
        bool pivot = false;
        bool stands = false;
        const double sine = std::sin(corner.angle * kRadian);
        const double reach = std::max(first, second) / std::max(sine, 1e-6) + 2 * bitRadius;
        for (std::size_t l = 0; l < m_opening.outline.loops.size(); ++l) {
            const auto& loop = m_opening.outline.loops[l];
            for (std::size_t p = 0; p < loop.size(); ++p) {
                // The corner stands where two rounds meet in it; with a straight stretch between they lie deeper.
                const OutlinePiece& before = loop[(p + loop.size() - 1) % loop.size()];
                stands = stands || (loop[p].isArc && before.isArc && distance(loop[p].from, corner.point) < kDoubt);
                if (!loop[p].isArc || m_opening.sources[l][p].contacts.size() != 2) continue;
                const Contact& a = m_opening.sources[l][p].contacts[0];
                const Contact& b = m_opening.sources[l][p].contacts[1];
                if (distance(loop[p].from, corner.point) > reach + corner.shortBy + bitRadius &&
                    distance(loop[p].to, corner.point) > reach + corner.shortBy + bitRadius) {
                    continue;
                }
                sound = sound || (isOwnWall(a, corner.first, corner) && isOwnWall(b, corner.second, corner));
                pivot = pivot || (isOwnLip(a, corner) && isOwnLip(b, corner) && a.lip != b.lip);
            }
        }
        if (sound) return Regime::Sound;
        if (stands) return Regime::TwoDips;
        return pivot ? Regime::Pivot : Regime::DeepDip;
    }

    /// A lip where one of the corner's two kerfs opens through the other's wall, next to the corner.
    [[nodiscard]] bool isOwnLip(const Contact& contact, const Corner& corner) const {
        if (!contact.onLip || !isOnLine(contact.side) || !isOnLine(contact.lipSide)) return false;
        const LineId& a = idOf(contact.side.line);
        const LineId& b = idOf(contact.lipSide.line);
        const bool pair = (a == corner.first && b == corner.second) || (a == corner.second && b == corner.first);
        if (!pair || distance(contact.lip, corner.point) < kJoin) return false;
        const double sine = std::sin(corner.angle * kRadian);
        const double mouth = std::max(kerfWidth(a), kerfWidth(b)) / std::max(std::abs(sine), 1e-9);
        return distance(contact.lip, corner.point) < mouth + kDoubt;
    }

  private:
    static bool isOnLine(const VoidSide& side) { return side.kind == VoidSide::Kind::Wall || isOnKerf(side); }

    [[nodiscard]] bool isOwnWall(const Contact& contact, const LineId& line, const Corner& corner) const {
        if (contact.onLip || contact.side.kind != VoidSide::Kind::Wall) return false;
        return idOf(contact.side.line) == line && corner.angle < 180;
    }

    [[nodiscard]] double stepOf(const OutlinePiece& piece, Point centre, double reach) const {
        const Curve curve = curveOf(piece);
        const Box box = curve.bounds();
        if (box.low.x > centre.x + reach || box.high.x < centre.x - reach || box.low.y > centre.y + reach ||
            box.high.y < centre.y - reach) {
            return 0;
        }
        std::vector<double> marks{0, curve.size};
        meetCircle(curve, centre, reach, marks);
        std::ranges::sort(marks);
        double most = 0;
        for (std::size_t i = 0; i + 1 < marks.size(); ++i) {
            if (distance(curve.at((marks[i] + marks[i + 1]) / 2), centre) > reach) continue;
            most = std::max(most, deepestOn(curve, marks[i], marks[i + 1], m_border).depth);
        }
        return most;
    }

    /// The same on the circle of that reach, where it runs inside the opening.
    [[nodiscard]] double onReach(Point centre, double reach) const {
        const Curve circle = arc(centre, reach, 0, 2 * std::numbers::pi, true);
        std::vector<double> marks{0, circle.size};
        for (const OutlineLoop& loop : m_opening.outline.loops) {
            for (const OutlinePiece& piece : loop) {
                if (piece.isArc) meetCircle(circle, piece.centre, piece.radius, marks);
                else meetLine(circle, piece.from, unit(piece.to - piece.from), marks);
            }
        }
        std::ranges::sort(marks);
        double most = 0;
        for (std::size_t i = 0; i + 1 < marks.size(); ++i) {
            const Point middle = circle.at((marks[i] + marks[i + 1]) / 2);
            if (m_border.distanceOutside(middle) == 0 || !isInside(m_opening.outline, middle)) continue;
            most = std::max(most, deepestOn(circle, marks[i], marks[i + 1], m_border).depth);
        }
        return most;
    }

    const SolvedCutout& m_cutout;
    const Opening& m_opening;
    const Project& m_project;
    const Arranged& m_arranged;
    const std::vector<LaidKerf>& m_kerfs;
    DrawnBorder m_border;
};

/// The relief hole of a corner, kept inside the finished round.
/// Source    centre r / sin(θ/2) - r + ρ from the corner, and 0.5 mm more for the drill's wander (common
///           practice, no source). Of no use over 135°, at inward corners and at bored ones.
std::optional<ReliefHole> reliefHole(const Corner& corner, double drill, double bitRadius) {
    constexpr double kLargestAngle = 135;
    constexpr double kWander = 0.5;
    if (corner.angle > kLargestAngle || corner.regime == Regime::Bored) return std::nullopt;
    const double half = std::sin(corner.angle * kRadian / 2);
    const Point in = unit(corner.firstTangent - corner.point);
    const Point out = unit(corner.secondTangent - corner.point);
    const Point bisector = unit(in + out);
    const double away = bitRadius / half - bitRadius + drill / 2 + kWander;
    return ReliefHole{corner.point + away * bisector, drill};
}

}  // namespace

void readCorners(SolvedCutout& cutout, const Opening& opening, const Project& project, const Arranged& arranged,
                 const std::vector<LaidKerf>& kerfs, double bitRadius) {
    const CornerReader reader(cutout, opening, project, arranged, kerfs);
    const std::optional<double> drill = benchOf(project).cornerDrill;
    for (Corner& corner : cutout.corners) {
        corner.step = reader.step(corner.point, 2 * bitRadius);
        if (corner.angle >= 180) continue;
        if (corner.regime != Regime::Bored) corner.regime = reader.regime(corner, bitRadius);
        if (drill) corner.drill = reliefHole(corner, *drill, bitRadius);
    }
}

namespace {

/// Adds what a piece rested on to a hollow.
void noteContacts(Hollow& hollow, const PieceSource& source, const SolvedCutout& cutout, const CornerReader& reader) {
    for (const Contact& contact : source.contacts) {
        for (const VoidSide* side : {&contact.side, contact.onLip ? &contact.lipSide : nullptr}) {
            if (!side) continue;
            if (side->kind == VoidSide::Kind::Wall) hollow.wall = reader.idOf(side->line);
            if (!isOnKerf(*side)) continue;
            const LineId& line = reader.idOf(side->line);
            if (std::ranges::find(hollow.lips, line) == hollow.lips.end()) hollow.lips.push_back(line);
        }
        for (std::size_t c = 0; c < cutout.corners.size() && !hollow.corner; ++c) {
            if (reader.isOwnLip(contact, cutout.corners[c])) hollow.corner = c;
        }
    }
}

}  // namespace

std::vector<Hollow> hollowsOf(const SolvedCutout& cutout, const Opening& opening, const Project& project,
                              const Arranged& arranged, const std::vector<LaidKerf>& kerfs) {
    const CornerReader reader(cutout, opening, project, arranged, kerfs);
    std::vector<Hollow> hollows;
    for (std::size_t l = 0; l < opening.outline.loops.size(); ++l) {
        const OutlineLoop& loop = opening.outline.loops[l];
        // Begin where no hollow runs on from the loop's last piece.
        std::size_t first = 0;
        while (first < loop.size() && reader.border().distanceOutside(loop[first].from) > 0) ++first;
        bool inHollow = false;
        for (std::size_t n = 0; n < loop.size(); ++n) {
            const std::size_t p = (first + n) % loop.size();
            const PieceSource& source = opening.sources[l][p];
            if (reader.border().distanceOutside(loop[p].from) == 0) inHollow = false;
            if (!mayBite(source)) continue;
            const Curve curve = curveOf(loop[p]);
            const Deepest deepest = deepestOn(curve, 0, curve.size, reader.border());
            if (deepest.depth <= 0) continue;
            if (!inHollow) hollows.emplace_back();
            inHollow = true;
            Hollow& hollow = hollows.back();
            if (deepest.depth > hollow.depth) {
                hollow.depth = deepest.depth;
                hollow.at = deepest.at;
            }
            noteContacts(hollow, source, cutout, reader);
        }
    }
    return hollows;
}

}  // namespace kerfwall
