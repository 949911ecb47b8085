// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/bites.h"

#include <algorithm>

#include "core/geometry/angle.h"
#include "core/geometry/drawn_border.h"
#include "core/geometry/tolerance.h"

namespace kerfwall {
namespace {

bool isOnKerf(const VoidSide& side) {
    return side.kind == VoidSide::Kind::Mouth || side.kind == VoidSide::Kind::FarSide ||
           side.kind == VoidSide::Kind::KerfEnd;
}

/// A piece that can lie outside the drawn cutout at all: not a wall, nor a round whose disc crosses no wall.
bool mayBite(const OutlinePiece& piece, const PieceSource& source, const DrawnBorder& border) {
    const bool onWalls = std::ranges::all_of(source.contacts, [](const Contact& contact) {
        return !contact.onLip && (contact.side.kind == VoidSide::Kind::Wall || contact.side.kind == VoidSide::Kind::Bore);
    });
    if (!onWalls) return true;
    return piece.isArc && border.distanceTo(piece.centre) < piece.radius - kBite;
}

class CornerReader {
  public:
    CornerReader(const SolvedCutout& cutout, const Opening& opening, const Project& project, const Arranged& arranged,
                 const std::vector<LaidKerf>& kerfs)
        : m_opening(opening), m_project(project), m_arranged(arranged), m_kerfs(kerfs),
          m_border(cutout.drawn) {
        for (std::size_t l = 0; l < opening.outline.loops.size(); ++l) {
            for (std::size_t p = 0; p < opening.outline.loops[l].size(); ++p) {
                const OutlinePiece& piece = opening.outline.loops[l][p];
                if (!mayBite(piece, opening.sources[l][p], m_border)) continue;
                const Curve curve = curveOf(piece);
                const Deepest deepest = deepestOn(curve, 0, curve.size, m_border);
                if (deepest.depth > 0) m_biting.push_back({l, p, curve, deepest});
            }
        }
    }

    /// A piece of the outline that lies outside the drawn cutout somewhere.
    struct Biting {
        std::size_t loop;
        std::size_t piece;
        Curve curve;
        Deepest deepest;
    };
    [[nodiscard]] const std::vector<Biting>& biting() const { return m_biting; }

    [[nodiscard]] const LineId& idOf(std::size_t line) const { return lineId(m_project, m_arranged, line); }
    [[nodiscard]] const DrawnBorder& border() const { return m_border; }

    /// Width of the line's kerf, one saw cutting both its sides; 0 where it has none.
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
        for (const Biting& biting : m_biting) most = std::max(most, stepOf(biting, centre, reach));
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
        const double sine = std::sin(radians(corner.angle));
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
        const double sine = std::sin(radians(corner.angle));
        const double mouth = std::max(kerfWidth(a), kerfWidth(b)) / std::max(std::abs(sine), 1e-9);
        return distance(contact.lip, corner.point) < mouth + kDoubt;
    }

  private:
    static bool isOnLine(const VoidSide& side) { return side.kind == VoidSide::Kind::Wall || isOnKerf(side); }

    [[nodiscard]] bool isOwnWall(const Contact& contact, const LineId& line, const Corner& corner) const {
        if (contact.onLip || contact.side.kind != VoidSide::Kind::Wall) return false;
        return idOf(contact.side.line) == line && corner.angle < 180;
    }

    [[nodiscard]] double stepOf(const Biting& biting, Point centre, double reach) const {
        const Curve& curve = biting.curve;
        if (distance(biting.deepest.at, centre) <= reach) return biting.deepest.depth;
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
        const Curve circle = arc(centre, reach, 0, kTurn, true);
        std::vector<double> marks{0, circle.size};
        for (const OutlineLoop& loop : m_opening.outline.loops) {
            for (const OutlinePiece& piece : loop) {
                const Curve curve = curveOf(piece);
                if (kerfwall::distanceTo(curve, centre) > reach + kDoubt) continue;
                const std::size_t before = marks.size();
                if (piece.isArc) meetCircle(circle, piece.centre, piece.radius, marks);
                else meetLine(circle, piece.from, unit(piece.to - piece.from), marks);
                const auto isOff = [&](double t) { return kerfwall::distanceTo(curve, circle.at(t)) > kDoubt; };
                marks.erase(std::remove_if(marks.begin() + static_cast<std::ptrdiff_t>(before), marks.end(), isOff),
                            marks.end());
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

    const Opening& m_opening;
    const Project& m_project;
    const Arranged& m_arranged;
    const std::vector<LaidKerf>& m_kerfs;
    DrawnBorder m_border;
    std::vector<Biting> m_biting;
};

/// The relief hole of a corner, kept inside the finished round.
/// Source    centre r / sin(θ/2) - r + ρ from the corner, and 0.5 mm more for the drill's wander (common
///           practice, no source). Of no use over 135°, at inward corners and at bored ones.
std::optional<ReliefHole> reliefHole(const Corner& corner, double drill, double bitRadius) {
    constexpr double kLargestAngle = 135;
    constexpr double kWander = 0.5;
    if (corner.angle > kLargestAngle || corner.regime == Regime::Bored) return std::nullopt;
    const double half = std::sin(radians(corner.angle) / 2);
    const Point in = unit(corner.firstTangent - corner.point);
    const Point out = unit(corner.secondTangent - corner.point);
    const Point bisector = unit(in + out);
    const double away = bitRadius / half - bitRadius + drill / 2 + kWander;
    return ReliefHole{corner.point + away * bisector, drill};
}

/// Adds what a piece rested on to a hollow.
void noteContacts(Hollow& hollow, const PieceSource& source, const SolvedCutout& cutout, const CornerReader& reader) {
    for (const Contact& contact : source.contacts) {
        for (const VoidSide* side : {&contact.side, contact.onLip ? &contact.lipSide : nullptr}) {
            if (!side || !isOnKerf(*side)) continue;
            const LineId& line = reader.idOf(side->line);
            if (std::ranges::find(hollow.lips, line) == hollow.lips.end()) hollow.lips.push_back(line);
        }
        for (std::size_t c = 0; c < cutout.corners.size() && !hollow.corner; ++c) {
            if (reader.isOwnLip(contact, cutout.corners[c])) hollow.corner = c;
        }
    }
}

/// Makes one hollow of two that run into one another.
void absorb(Hollow& hollow, const Hollow& other) {
    if (other.depth > hollow.depth) {
        hollow.depth = other.depth;
        hollow.at = other.at;
        hollow.wall = other.wall;
    }
    if (!hollow.corner) hollow.corner = other.corner;
    for (const LineId& lip : other.lips) {
        if (std::ranges::find(hollow.lips, lip) == hollow.lips.end()) hollow.lips.push_back(lip);
    }
}

/// Every place where the opening bites past the drawn cutout.
std::vector<Hollow> hollowsOf(const SolvedCutout& cutout, const Opening& opening, const CornerReader& reader) {
    std::vector<Hollow> hollows;
    // Pieces that follow one another outside the drawn cutout are one hollow.
    std::optional<std::size_t> loop;
    std::vector<Hollow> ofLoop;
    std::vector<bool> runsOn;
    const auto finishLoop = [&] {
        // The loop's last hollow may run on into its first.
        if (ofLoop.size() > 1 && runsOn.front()) {
            absorb(ofLoop.front(), ofLoop.back());
            ofLoop.pop_back();
        }
        std::ranges::move(ofLoop, std::back_inserter(hollows));
        ofLoop.clear();
        runsOn.clear();
    };
    for (const CornerReader::Biting& biting : reader.biting()) {
        if (loop != biting.loop) finishLoop();
        const bool goesOn = reader.border().distanceOutside(biting.curve.from) > 0;
        Hollow hollow{biting.deepest.at, biting.deepest.depth, reader.border().nearestName(biting.deepest.at), {}, {}};
        noteContacts(hollow, opening.sources[biting.loop][biting.piece], cutout, reader);
        if (goesOn && !ofLoop.empty()) {
            absorb(ofLoop.back(), hollow);
        } else {
            ofLoop.push_back(std::move(hollow));
            runsOn.push_back(goesOn);
        }
        loop = biting.loop;
    }
    finishLoop();
    return hollows;
}

}  // namespace

void readBites(SolvedCutout& cutout, const Opening& opening, const Project& project, const Arranged& arranged,
               const std::vector<LaidKerf>& kerfs, double bitRadius) {
    const CornerReader reader(cutout, opening, project, arranged, kerfs);
    const std::optional<double> drill = benchOf(project).cornerDrill;
    for (Corner& corner : cutout.corners) {
        corner.step = reader.step(corner.point, 2 * bitRadius);
        if (corner.angle >= 180) continue;
        if (corner.regime != Regime::Bored) corner.regime = reader.regime(corner, bitRadius);
        if (drill) corner.drill = reliefHole(corner, *drill, bitRadius);
    }
    cutout.hollows = hollowsOf(cutout, opening, reader);
}

}  // namespace kerfwall
