// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/exact_opening.h"

#include "tests/oracle/exact_sets.h"

#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/General_polygon_set_2.h>
#include <CGAL/Gps_circle_segment_traits_2.h>

#include <cmath>
#include <list>
#include <map>
#include <vector>

namespace kerfwall::oracle {
namespace {

using Kernel = CGAL::Exact_predicates_exact_constructions_kernel;
using Number = Kernel::FT;
using Traits = CGAL::Gps_circle_segment_traits_2<Kernel>;
using Set = CGAL::General_polygon_set_2<Traits>;
using Polygon = Traits::Polygon_2;
using Holed = Traits::Polygon_with_holes_2;
using Stretch = Traits::X_monotone_curve_2;
using Place = Kernel::Point_2;

constexpr double kSliver = 1e-7;     // mm²: what fractions for unit normals leave behind
constexpr double kSameSpot = 1e-10;  // mm: discs nearer than this are one
constexpr double kSharp = 1e-12;     // mm: a corner known better than this needs no long arithmetic
constexpr double kNoTurn = 1e-9;     // radians: an arc its end discs cover
constexpr double kFilm = 1e-11;      // mm a kerf is widened on its far side: sides that coincide leave no film of wood
constexpr double kInside = 1e-9;     // mm inside the panel's edge at which the sweep is cut off: fractions
                                     // for unit normals leave films along the edge that join its pieces

// A vector of length exactly 1 that points along (dx, dy) within 1e-14.
Kernel::Vector_2 unitAlong(double dx, double dy) {
    const bool flat = std::abs(dx) >= std::abs(dy);
    const double main = flat ? dx : dy;
    const double other = flat ? dy : dx;
    const double sign = main < 0 ? -1 : 1;
    const double half = std::tan(std::atan2(other * sign, main * sign) / 2);
    const Number t = std::round(half * 0x1p46) / 0x1p46;
    const Number along = sign * (1 - t * t) / (1 + t * t);
    const Number across = sign * 2 * t / (1 + t * t);
    return flat ? Kernel::Vector_2(along, across) : Kernel::Vector_2(across, along);
}

Place place(Point p) { return {p.x, p.y}; }

Number number(const Exact& value) { return Number(Number::ET(value.backend().data())); }
Place place(const ExactPoint& p) { return {number(p.x), number(p.y)}; }

std::vector<std::vector<Place>> facesExactly(const PlainCutout& cutout) {
    std::vector<std::vector<Place>> faces;
    const auto add = [&](const auto& from) {
        for (const auto& face : from) {
            faces.emplace_back();
            for (const auto& corner : face) faces.back().push_back(place(corner));
        }
    };
    if (cutout.exactFaces.empty()) {
        add(cutout.faces);
    } else {
        add(cutout.exactFaces);
    }
    return faces;
}

Polygon polygonOf(const std::vector<Place>& corners) {
    Polygon polygon;
    for (std::size_t i = 0; i < corners.size(); ++i)
        polygon.push_back(Stretch(corners[i], corners[(i + 1) % corners.size()]));
    return polygon;
}

void append(Polygon& polygon, const Traits::Curve_2& curve) {
    std::vector<boost::variant<Traits::Point_2, Stretch>> parts;
    Traits().make_x_monotone_2_object()(curve, std::back_inserter(parts));
    for (const auto& part : parts) polygon.push_back(boost::get<Stretch>(part));
}

Polygon discAt(Point centre, double radius) {
    Polygon disc;
    const Number r = radius;
    append(disc, Traits::Curve_2(Kernel::Circle_2(place(centre), r * r, CGAL::COUNTERCLOCKWISE)));
    return disc;
}

// a + b sqrt(c), rounded once. The library's own rounding stops at five digits where an interval leaves it in doubt:
// at a meeting of two curves that hardly cross.
double shown(const Traits::CoordNT& number) {
    using Interval = CGAL::Interval_nt<false>;
    const Interval::Protector rounding;
    const auto bounds = [](const Number& n) { return Interval(CGAL::to_interval(n)); };
    Interval near = bounds(number.a0());
    if (number.is_extended()) near += bounds(number.a1()) * CGAL::sqrt(bounds(number.root()));
    if (near.sup() - near.inf() < kSharp) return (near.inf() + near.sup()) / 2;
    using Long = boost::multiprecision::number<boost::multiprecision::gmp_float<150>>;
    const auto exactly = [](const Number& n) { return Long(Exact(CGAL::exact(n).get_mpq_t())); };
    if (!number.is_extended()) return static_cast<double>(exactly(number.a0()));
    return static_cast<double>(exactly(number.a0()) + exactly(number.a1()) * sqrt(exactly(number.root())));
}

Point shown(const Traits::Point_2& p) { return {shown(p.x()), shown(p.y())}; }

OutlinePiece pieceOf(const Stretch& stretch) {
    OutlinePiece piece;
    piece.from = shown(stretch.source());
    piece.to = shown(stretch.target());
    if (stretch.is_linear()) return piece;
    const auto& circle = stretch.supporting_circle();
    piece.isArc = true;
    piece.centre = {CGAL::to_double(circle.center().x()), CGAL::to_double(circle.center().y())};
    piece.radius = std::sqrt(CGAL::to_double(circle.squared_radius()));
    piece.turn = stretch.orientation() == CGAL::COUNTERCLOCKWISE ? Turn::Left : Turn::Right;
    return piece;
}

double sweep(const OutlinePiece& arc) {
    const Point a = arc.from - arc.centre;
    const Point b = arc.to - arc.centre;
    return std::abs(std::atan2(cross(a, b), dot(a, b)));
}

double areaUnder(const OutlinePiece& piece) {
    const double chord = cross(piece.from, piece.to) / 2;
    if (!piece.isArc) return chord;
    const double turn = sweep(piece);
    const double bulge = piece.radius * piece.radius / 2 * (turn - std::sin(turn));
    return piece.turn == Turn::Left ? chord + bulge : chord - bulge;
}

std::vector<OutlinePiece> piecesOf(const Polygon& polygon) {
    std::vector<OutlinePiece> pieces;
    for (auto it = polygon.curves_begin(); it != polygon.curves_end(); ++it) pieces.push_back(pieceOf(*it));
    return pieces;
}

double areaOf(const std::vector<OutlinePiece>& loop) {
    double area = 0;
    for (const OutlinePiece& piece : loop) area += areaUnder(piece);
    return area;
}

std::vector<Holed> partsOf(const Set& set) {
    std::vector<Holed> parts;
    set.polygons_with_holes(std::back_inserter(parts));
    return parts;
}

double areaOf(const Holed& part) {
    double area = areaOf(piecesOf(part.outer_boundary()));
    for (auto hole = part.holes_begin(); hole != part.holes_end(); ++hole) area += areaOf(piecesOf(*hole));
    return area;
}

// What a disc of `radius` covers while its centre runs along the borders given to it.
class Sweep {
  public:
    explicit Sweep(double radius) : m_radius(radius) {}

    void along(const Polygon& border) {
        for (const OutlinePiece& piece : piecesOf(border)) {
            spot(piece.from);
            spot(piece.to);
            if (piece.isArc)
                ring(piece);
            else
                rectangle(piece.from, piece.to);
        }
    }
    void along(const Holed& part) {
        if (!part.is_unbounded()) along(part.outer_boundary());
        for (auto hole = part.holes_begin(); hole != part.holes_end(); ++hole) along(*hole);
    }
    const std::vector<Polygon>& pieces() const { return m_pieces; }

  private:
    void spot(Point p) {
        const auto key = std::pair{std::llround(p.x / kSameSpot), std::llround(p.y / kSameSpot)};
        if (m_spots.emplace(key, true).second) m_pieces.push_back(discAt(p, m_radius));
    }
    void rectangle(Point a, Point b) {
        if (distance(a, b) < kSameSpot) return;
        const Kernel::Vector_2 side = m_radius * unitAlong(-(b.y - a.y), b.x - a.x);
        m_pieces.push_back(polygonOf({place(a) - side, place(b) - side, place(b) + side, place(a) + side}));
    }
    void ring(const OutlinePiece& arc) {
        if (sweep(arc) < kNoTurn) return;
        const bool left = arc.turn == Turn::Left;
        const Point first = (left ? arc.from : arc.to) - arc.centre;
        const Point last = (left ? arc.to : arc.from) - arc.centre;
        const Kernel::Vector_2 start = unitAlong(first.x, first.y);
        const Kernel::Vector_2 end = unitAlong(last.x, last.y);
        const Place centre = place(arc.centre);
        const Number outer = Number(arc.radius) + m_radius;
        const Number inner = arc.radius - m_radius < kSameSpot ? Number(0) : Number(arc.radius) - m_radius;
        Polygon piece;
        append(piece, curve(centre, outer, start, end, CGAL::COUNTERCLOCKWISE));
        piece.push_back(Stretch(centre + outer * end, centre + inner * end));
        if (inner > 0) append(piece, curve(centre, inner, end, start, CGAL::CLOCKWISE));
        piece.push_back(Stretch(centre + inner * start, centre + outer * start));
        m_pieces.push_back(piece);
    }
    static Traits::Curve_2 curve(const Place& centre, const Number& r, const Kernel::Vector_2& from,
                                 const Kernel::Vector_2& to, CGAL::Orientation turn) {
        const Place a = centre + r * from;
        const Place b = centre + r * to;
        return {Kernel::Circle_2(centre, r * r, turn), Traits::Point_2(a.x(), a.y()),
                Traits::Point_2(b.x(), b.y())};
    }

    double m_radius;
    std::vector<Polygon> m_pieces;
    std::map<std::pair<long long, long long>, bool> m_spots;
};

Polygon bandPolygon(const PlainBand& band) {
    const Point run = band.to - band.from;
    const double size = length(run);
    const bool isExact = !band.exactEnds.empty();
    const Place from = isExact ? place(band.exactEnds.front()) : place(band.from);
    const Kernel::Vector_2 along = (isExact ? place(band.exactEnds.back()) : place(band.to)) - from;
    const Place a = from + Number(band.s0 / size) * along;
    const Place b = from + Number(band.s1 / size) * along;
    const Kernel::Vector_2 side = band.left ? unitAlong(-run.y, run.x) : unitAlong(run.y, -run.x);
    // The near side lies on the line itself; widened there, needles of wood between two lines would lose their tips.
    const Kernel::Vector_2 near = (band.isDoubled ? -kFilm : 0) * side;
    const Kernel::Vector_2 far = (Number(band.width) + kFilm) * side;
    return band.left ? polygonOf({a + near, b + near, b + far, a + far})
                     : polygonOf({b + near, a + near, a + far, b + far});
}

Polygon boxPolygon(Point low, Point high) {
    return polygonOf({place(low), {high.x, low.y}, place(high), {low.x, high.y}});
}

Set facesOf(const PlainCutout& cutout) {
    std::vector<Polygon> faces;
    for (const std::vector<Place>& corners : facesExactly(cutout)) faces.push_back(polygonOf(corners));
    Set joined;
    joined.join(faces.begin(), faces.end());
    return joined;
}

// The wood on the panel: panel less faces (rounded where bored) and kerfs.
Set woodOf(const PlainLayout& layout, const PlainCutout& cutout) {
    Set empty = facesOf(cutout);
    for (const PlainRound& round : cutout.rounds) {
        Set kept(
            polygonOf({place(round.corner), place(round.second), place(round.centre), place(round.first)}));
        kept.difference(discAt(round.centre, round.radius));
        empty.difference(kept);
    }
    // The whole bore is void, also where it reaches past another wall or into another corner's wood.
    for (const PlainRound& round : cutout.rounds) empty.join(discAt(round.centre, round.radius));
    std::vector<Polygon> bands;
    for (const PlainBand& band : layout.bands)
        if (band.s1 > band.s0) bands.push_back(bandPolygon(band));
    Set kerfs;
    kerfs.join(bands.begin(), bands.end());
    empty.join(kerfs);
    Set wood(polygonOf({place(ExactPoint{0, 0}), place(ExactPoint{exactNumber(layout.width), 0}),
                        place(exactPoint({layout.width, layout.height})),
                        place(ExactPoint{0, exactNumber(layout.height)})}));
    wood.difference(empty);
    return wood;
}

// True where they have more than a border in common: borders are rounded.
bool isOver(const Set& drawn, const Holed& part) {
    if (!drawn.do_intersect(part)) return false;
    Set both(part);
    both.intersection(drawn);
    double area = 0;
    for (const Holed& piece : partsOf(both)) area += areaOf(piece);
    return area > kSliver;
}

// Two parts that meet only outside the panel are two.
int partsOnPanel(const Holed& room, const PlainLayout& layout, const Set& drawn) {
    Set onPanel(room);
    onPanel.intersection(boxPolygon({0, 0}, {layout.width, layout.height}));
    int parts = 0;
    for (const Holed& part : partsOf(onPanel)) parts += areaOf(part) > kSliver && isOver(drawn, part) ? 1 : 0;
    return parts;
}

Set joined(const Set& core, const std::vector<Polygon>& pieces) {
    std::vector<Holed> parts = partsOf(core);
    Set all;
    all.join(pieces.begin(), pieces.end(), parts.begin(), parts.end());
    return all;
}

}  // namespace

double exactDrawnArea(const PlainCutout& cutout) {
    double area = 0;
    for (const Holed& part : partsOf(facesOf(cutout))) area += areaOf(part);
    return area;
}

OpeningAnswer exactOpening(const OpeningQuestion& question) {
    const PlainLayout& layout = *question.layout;
    const PlainCutout& cutout = layout.cutouts[question.cutout];
    const Set drawn = facesOf(cutout);

    const Set wood = woodOf(layout, cutout);
    Sweep aroundWood(question.erode);
    for (const Holed& part : partsOf(wood)) aroundWood.along(part);
    const double world = 4 * (question.erode + question.dilate) + 10;
    Set room(boxPolygon({-world, -world}, {layout.width + world, layout.height + world}));
    room.difference(joined(wood, aroundWood.pieces()));

    OpeningAnswer answer;
    Set reached;
    Sweep aroundRoom(question.dilate);
    for (const Holed& part : partsOf(room)) {
        if (areaOf(part) < kSliver || !isOver(drawn, part)) continue;
        answer.parts += partsOnPanel(part, layout, drawn);
        reached.join(part);
        aroundRoom.along(part);
    }
    if (reached.is_empty()) return answer;
    Set opening = joined(reached, aroundRoom.pieces());
    opening.intersection(boxPolygon({kInside, kInside}, {layout.width - kInside, layout.height - kInside}));

    for (const Holed& part : partsOf(opening)) {
        if (areaOf(part) < kSliver || !isOver(drawn, part)) continue;
        answer.area += areaOf(part);
        const auto gather = [&](const Polygon& loop) {
            const std::vector<OutlinePiece> pieces = piecesOf(loop);
            if (std::abs(areaOf(pieces)) < kSliver) return;
            answer.border.insert(answer.border.end(), pieces.begin(), pieces.end());
        };
        gather(part.outer_boundary());
        for (auto hole = part.holes_begin(); hole != part.holes_end(); ++hole) gather(*hole);
    }
    for (const OutlinePiece& piece : answer.border) {
        const double run = piece.isArc ? piece.radius * sweep(piece) : distance(piece.from, piece.to);
        answer.perimeter += run;
        if (piece.isArc) answer.arcLength += run;
    }
    return answer;
}

ExactSet exactFaces(const PlainCutout& cutout) { return facesOf(cutout); }

ExactSet exactWood(const PlainLayout& layout, const PlainCutout& cutout) { return woodOf(layout, cutout); }

ExactSet exactBands(const std::vector<PlainBand>& bands) {
    std::vector<Polygon> polygons;
    for (const PlainBand& band : bands)
        if (band.s1 > band.s0) polygons.push_back(bandPolygon(band));
    ExactSet set;
    set.join(polygons.begin(), polygons.end());
    return set;
}

ExactSet exactDiscs(const std::vector<PlainRound>& bores) {
    ExactSet set;
    for (const PlainRound& bore : bores) set.join(discAt(bore.centre, bore.radius));
    return set;
}

ExactSet exactBox(Point low, Point high) { return ExactSet(boxPolygon(low, high)); }

ExactSet exactGrown(const ExactSet& set, double radius) {
    Sweep around(radius);
    for (const Holed& part : partsOf(set)) around.along(part);
    return joined(set, around.pieces());
}

ExactSet exactPartsOver(const ExactSet& set, const ExactSet& over, int* count) {
    ExactSet kept;
    if (count) *count = 0;
    for (const Holed& part : partsOf(set)) {
        if (areaOf(part) < kSliver || !over.do_intersect(part)) continue;
        if (count) ++*count;
        kept.join(part);
    }
    return kept;
}

double exactArea(const ExactSet& set) {
    double area = 0;
    for (const Holed& part : partsOf(set)) area += areaOf(part);
    return area;
}

}  // namespace kerfwall::oracle
