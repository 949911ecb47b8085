// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/plain_layout.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

#include "tests/oracle/exact_line.h"

namespace kerfwall::oracle {
namespace {

constexpr double kBeyond = 5000;     // mm a through kerf's band runs past the panel: farther than its far side can
constexpr double kLeastWall = 1e-3;  // mm; a shorter stretch of border counts as a point
constexpr double kSameLine = 1e-11;  // mm between lines that rounding alone keeps apart
constexpr double kFarMeeting = 0.01;  // mm from a short stretch to where its neighbours' lines cross
constexpr double kHeldWall = 1.0;    // mm of wall left in a stopped kerf where the bearing is held

// One side of a face: on a cut line (index) or on a panel edge (lines.size() + edge).
struct FaceSide {
    ExactPoint from;
    std::size_t on = 0;
};
using FaceRing = std::vector<FaceSide>;

// What the half-plane left of `line` leaves of a convex face.
FaceRing clipped(const FaceRing& face, const ExactLine& line, std::size_t on) {
    FaceRing kept;
    for (std::size_t i = 0; i < face.size(); ++i) {
        const ExactPoint a = face[i].from;
        const ExactPoint b = face[(i + 1) % face.size()].from;
        const Exact da = offsetOf(line, a);
        const Exact db = offsetOf(line, b);
        if (da > 0 || (da == 0 && db > 0)) kept.push_back({a, face[i].on});
        if (da > 0 && db <= 0) kept.push_back({db == 0 ? b : between(a, b, da / (da - db)), on});
        if (da < 0 && db > 0) kept.push_back({between(a, b, da / (da - db)), face[i].on});
    }
    // A line that only touches a corner would leave a side without length there.
    FaceRing sides;
    for (std::size_t i = 0; i < kept.size(); ++i)
        if (!(kept[i].from == kept[(i + 1) % kept.size()].from)) sides.push_back(kept[i]);
    return sides;
}

// The face round `seed`, or none where the seed lies on a line or off the panel.
std::optional<FaceRing> faceRound(const std::vector<ExactLine>& lines, const std::vector<bool>& cut,
                                  const std::array<ExactLine, 4>& edges, const ExactPoint& seed) {
    FaceRing face;
    for (std::size_t e = 0; e < 4; ++e) {
        if (offsetOf(edges[e], seed) <= 0) return std::nullopt;
        face.push_back({edges[e].p, lines.size() + e});
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!cut[i]) continue;
        const Exact side = offsetOf(lines[i], seed);
        if (side == 0) return std::nullopt;
        face = clipped(face, side > 0 ? lines[i] : reversed(lines[i]), i);
    }
    return face;
}

using Key = std::pair<ExactPoint, ExactPoint>;

// The border of joined faces as half-edges, the cutout on their left.
struct Border {
    std::vector<FaceRing> faces;
    std::map<Key, std::pair<std::size_t, std::size_t>> at;  // (from, to) -> face, side

    explicit Border(std::vector<FaceRing> joined) : faces(std::move(joined)) {
        for (std::size_t f = 0; f < faces.size(); ++f)
            for (std::size_t i = 0; i < faces[f].size(); ++i) at[key(f, i)] = {f, i};
    }
    Key key(std::size_t f, std::size_t i) const {
        return {faces[f][i].from, faces[f][(i + 1) % faces[f].size()].from};
    }
    const std::pair<std::size_t, std::size_t>* twin(std::size_t f, std::size_t i) const {
        const auto [a, b] = key(f, i);
        const auto found = at.find({b, a});
        return found == at.end() ? nullptr : &found->second;
    }
    // The border's next half-edge: turn about the end of this one until a side no face shares.
    std::pair<std::size_t, std::size_t> next(std::size_t f, std::size_t i) const {
        std::size_t j = (i + 1) % faces[f].size();
        while (const auto* other = twin(f, j)) {
            f = other->first;
            j = (other->second + 1) % faces[f].size();
        }
        return {f, j};
    }
};

double interiorAngle(const ExactPoint& arriving, const ExactPoint& leaving) {
    const Point in = rounded(arriving);
    const Point out = rounded(leaving);
    return std::numbers::pi - std::atan2(cross(in, out), dot(in, out));
}

struct WallEnd {
    bool atEdge = false;
    double angle = 0;
    double bore = 0;  // radius of the bored arc; 0: left to the bit
};

struct RawWall {
    std::size_t line = 0;
    bool left = true;
    ExactPoint from;  // in the border's direction
    ExactPoint to;
    WallEnd start;
    WallEnd end;
    ExactPoint way{};  // as it runs, before its ends are moved to where it meets its neighbours
};

// Where two walls meet. With a stretch too short to count between them that is where their lines cross, or, if
// those run so flat that they cross elsewhere, the middle of that stretch.
ExactPoint meetingOf(const RawWall& wall, const RawWall& next) {
    if (wall.to == next.from) return wall.to;
    const ExactPoint middle = between(wall.to, next.from, Exact(1) / 2);
    const ExactPoint& in = wall.way;
    const ExactPoint& out = next.way;
    const Exact turned = crossOf(in, out);
    if (turned == 0) return middle;
    const ExactPoint met = between(wall.to, ExactPoint{wall.to.x + in.x, wall.to.y + in.y}, crossOf(next.from - wall.to, out) / turned);
    return length(rounded(met - middle)) < kFarMeeting ? met : middle;
}

double boreAt(const Project& project, const Cutout& cutout, std::size_t a, std::size_t b) {
    for (const BoredCorner& bored : cutout.corners) {
        const LineId& first = project.lines[a].id;
        const LineId& second = project.lines[b].id;
        if ((bored.first == first && bored.second == second) ||
            (bored.first == second && bored.second == first))
            return bored.radius;
    }
    return 0;
}

PlainRound roundAt(const PlainCorner& corner, Point arriving, Point leaving, double radius) {
    const double setBack = radius / std::tan(corner.angle / 2);
    const Point in = unit(arriving);
    const Point out = unit(leaving);
    const Point first = corner.point - setBack * in;
    return {corner.point, first + radius * leftOf(in), first, corner.point + setBack * out, radius};
}

// Follows the border loop by loop and gathers walls and corners.
std::vector<RawWall> wallsAndCorners(const Project& project, const Cutout& said, const Border& border,
                                     const std::vector<ExactLine>& lines, double bit, PlainCutout& cutout) {
    std::vector<RawWall> walls;
    std::set<std::pair<std::size_t, std::size_t>> seen;
    for (std::size_t f = 0; f < border.faces.size(); ++f)
        for (std::size_t i = 0; i < border.faces[f].size(); ++i) {
            if (border.twin(f, i) || seen.count({f, i})) continue;
            std::vector<RawWall> loop;
            for (std::pair<std::size_t, std::size_t> at{f, i}; !seen.count(at);) {
                seen.insert(at);
                const auto [a, b] = border.key(at.first, at.second);
                const std::size_t on = border.faces[at.first][at.second].on;
                if (!loop.empty() && loop.back().line == on)
                    loop.back().to = b;
                else
                    loop.push_back({on, true, a, b, {}, {}});
                at = border.next(at.first, at.second);
            }
            if (loop.size() > 1 && loop.front().line == loop.back().line) {
                loop.front().from = loop.back().from;
                loop.pop_back();
            }
            // Less counts as a point: its neighbours meet there.
            std::erase_if(loop, [&](const RawWall& wall) {
                return wall.line < lines.size() && length(rounded(wall.to - wall.from)) < kLeastWall;
            });
            for (RawWall& wall : loop) wall.way = wall.to - wall.from;
            for (std::size_t k = 0; k < loop.size(); ++k) {
                RawWall& wall = loop[k];
                RawWall& next = loop[(k + 1) % loop.size()];
                const bool edge = wall.line >= lines.size() || next.line >= lines.size();
                wall.end.atEdge = next.start.atEdge = edge;
                if (edge) continue;
                const double angle = interiorAngle(wall.way, next.way);
                wall.to = next.from = meetingOf(wall, next);
                PlainCorner corner{wall.line, next.line, rounded(wall.to), angle};
                wall.end.angle = next.start.angle = angle;
                const double bore =
                    angle < std::numbers::pi ? boreAt(project, said, wall.line, next.line) : 0;
                if (bore > bit) {
                    wall.end.bore = next.start.bore = bore;
                    cutout.rounds.push_back(
                        roundAt(corner, rounded(wall.way), rounded(next.way), bore));
                }
                cutout.corners.push_back(corner);
            }
            for (RawWall& wall : loop) {
                if (wall.line >= lines.size()) {
                    cutout.open = true;
                    continue;
                }
                wall.left = dotOf(lines[wall.line].d, wall.way) > 0;
                walls.push_back(wall);
            }
        }
    return walls;
}

const Saw& sawOf(const Project& project, const LayoutLine& line) {
    for (const Saw& saw : project.bench->saws)
        if (line.saw == saw.id) return saw;
    return project.bench->saws.front();
}

double tangentLength(const WallEnd& end, double bit) {
    if (end.angle >= std::numbers::pi) return 0;
    return std::max(end.bore, bit) / std::tan(end.angle / 2);
}

// The band of one wall's kerf; through bands of one line and side come out equal and are joined later.
PlainBand bandOf(const Project& project, const RawWall& wall, const PlainLine& line, double bit) {
    const LayoutLine& said = project.lines[wall.line];
    const Saw& saw = sawOf(project, said);
    const Point along = unit(line.to - line.from);
    const double run = distance(line.from, line.to);
    const bool stopped = said.extent == Extent::Stopped;
    // The blade's round, kHeldWall above the floor: how far past the full depth its groove reaches.
    const double R = saw.blade / 2;
    const double reach = std::sqrt(R * R - (R - kHeldWall) * (R - kHeldWall));
    const bool forward = wall.left;
    const double s0 = dot(rounded(forward ? wall.from : wall.to) - line.from, along);
    const double s1 = dot(rounded(forward ? wall.to : wall.from) - line.from, along);
    const WallEnd& low = forward ? wall.start : wall.end;
    const WallEnd& high = forward ? wall.end : wall.start;
    PlainBand band{line.from, line.to, -kBeyond, run + kBeyond, wall.left, saw.kerf, wall.line, {}};
    // Full depth lies between the two arcs' tangent points; where the arcs overlap, at the middle.
    double from = low.atEdge ? -kBeyond : s0 + tangentLength(low, bit);
    double to = high.atEdge ? run + kBeyond : s1 - tangentLength(high, bit);
    if (stopped && from > to) from = to = (from + to) / 2;
    if (stopped || low.bore > 0) band.s0 = low.atEdge || low.bore > 0 ? from : from - reach;
    if (stopped || high.bore > 0) band.s1 = high.atEdge || high.bore > 0 ? to : to + reach;
    return band;
}

/// A stretch of one side of a line where a bore's round stays whole, whatever other walls there ask.
struct WholeRound {
    std::size_t line = 0;
    bool left = true;
    double s0 = 0;
    double s1 = 0;
};

std::vector<WholeRound> wholeRoundsOf(const RawWall& wall, double s0, double s1, double bit) {
    std::vector<WholeRound> rounds;
    const WallEnd& low = wall.left ? wall.start : wall.end;
    const WallEnd& high = wall.left ? wall.end : wall.start;
    if (low.bore > 0) rounds.push_back({wall.line, wall.left, s0, s0 + tangentLength(low, bit)});
    if (high.bore > 0) rounds.push_back({wall.line, wall.left, s1 - tangentLength(high, bit), s1});
    return rounds;
}

/// The bands with those stretches taken out of the through ones.
std::vector<PlainBand> withoutRounds(std::vector<PlainBand> bands, const std::vector<WholeRound>& rounds,
                                     const Project& project) {
    for (const WholeRound& round : rounds) {
        std::vector<PlainBand> kept;
        for (const PlainBand& band : bands) {
            const bool apart = band.line != round.line || band.left != round.left || band.s1 <= round.s0 || band.s0 >= round.s1;
            if (apart || project.lines[band.line].extent == Extent::Stopped) {
                kept.push_back(band);
                continue;
            }
            for (const auto& [s0, s1] : {std::pair{band.s0, round.s0}, std::pair{round.s1, band.s1}}) {
                if (s0 >= s1) continue;
                kept.push_back(band);
                kept.back().s0 = s0;
                kept.back().s1 = s1;
            }
        }
        bands = std::move(kept);
    }
    return bands;
}

bool isDoubled(const std::vector<PlainLine>& lines, std::size_t index) {
    const auto isNear = [](const PlainLine& line, Point p) {
        return std::abs(cross(unit(line.to - line.from), p - line.from)) < kSameLine;
    };
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (i == index || !lines[i].cut) continue;
        if (isNear(lines[i], lines[index].from) && isNear(lines[i], lines[index].to)) return true;
    }
    return false;
}

}  // namespace

std::optional<PlainLayout> plainLayout(const Project& project) {
    PlainLayout plain;
    plain.width = project.panel.width;
    plain.height = project.panel.height;
    plain.bitRadius = project.bench->trimBit->diameter / 2;
    const auto edges = panelEdges(project.panel);
    const auto resolved = exactLines(project);
    if (!resolved) return std::nullopt;
    std::vector<bool> cut;
    std::vector<std::vector<ExactPoint>> exactEnds;
    for (std::size_t i = 0; i < project.lines.size(); ++i) {
        cut.push_back(project.lines[i].cut);
        const auto ends = onPanel((*resolved)[i], edges);
        if (!ends) return std::nullopt;
        exactEnds.push_back({ends->first, ends->second});
        plain.lines.push_back({rounded(ends->first), rounded(ends->second), project.lines[i].cut});
    }
    std::set<Key> taken;
    std::vector<WholeRound> rounds;
    for (const Cutout& said : project.cutouts) {
        PlainCutout cutout;
        std::vector<FaceRing> faces;
        std::set<std::vector<ExactPoint>> own;
        Exact twice = 0;
        for (const Point& seed : said.seeds) {
            const auto face = faceRound(*resolved, cut, edges, exactPoint(seed));
            if (!face) return std::nullopt;
            std::vector<ExactPoint> ring;
            std::vector<Point> shown;
            for (const FaceSide& side : *face) {
                ring.push_back(side.from);
                shown.push_back(rounded(side.from));
            }
            std::rotate(ring.begin(), std::min_element(ring.begin(), ring.end()), ring.end());
            if (!own.insert(ring).second) continue;
            if (!taken.insert({ring[0], ring[1]}).second) return std::nullopt;
            for (std::size_t i = 0; i < ring.size(); ++i)
                twice += crossOf(ring[i], ring[(i + 1) % ring.size()]);
            faces.push_back(*face);
            cutout.faces.push_back(shown);
            cutout.exactFaces.emplace_back();
            for (const FaceSide& side : *face) cutout.exactFaces.back().push_back(side.from);
        }
        cutout.drawnArea = static_cast<double>(Exact(twice / 2));
        for (const RawWall& wall :
             wallsAndCorners(project, said, Border(faces), *resolved, plain.bitRadius, cutout)) {
            const PlainLine& line = plain.lines[wall.line];
            const Point along = unit(line.to - line.from);
            double s0 = dot(rounded(wall.from) - line.from, along);
            double s1 = dot(rounded(wall.to) - line.from, along);
            if (s0 > s1) std::swap(s0, s1);
            cutout.walls.push_back({wall.line, wall.left, s0, s1});
            std::ranges::copy(wholeRoundsOf(wall, s0, s1, plain.bitRadius), std::back_inserter(rounds));
            plain.bands.push_back(bandOf(project, wall, line, plain.bitRadius));
            plain.bands.back().exactEnds = exactEnds[wall.line];
            plain.bands.back().isDoubled = isDoubled(plain.lines, wall.line);
        }
        plain.cutouts.push_back(cutout);
    }
    plain.bands = withoutRounds(std::move(plain.bands), rounds, project);
    return plain;
}

}  // namespace kerfwall::oracle
