// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/trimmed_void.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/angle.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/swept_region.h"
#include "core/geometry/tolerance.h"
#include "core/geometry/void_parts.h"

namespace kerfwall {
namespace {

constexpr int kEdgeOwner = kFacesOwner - 1;   ///< before kerfs and what lies off the panel
constexpr int kSweptOwner = kFacesOwner - 2;  ///< before all
constexpr int kFrameOwner = kFacesOwner - 3;

/// A line, a kerf's side or end, or an edge of the panel: what a straight piece of the sweep can lie on.
struct Support {
    HalfPlane half;
    VoidSide side;
};

struct Band {
    ConvexPart part;
    std::vector<VoidSide> sides;  ///< beside the part's bounds
};

struct Bore {
    Point centre;
    double radius = 0;
    double start = 0;  ///< the angle of its first tangent point
    std::size_t corner = 0;
};

class TrimmedVoid {
  public:
    TrimmedVoid(const Project& project, const Arranged& arranged, const Border& border,
                const std::vector<LaidKerf>& kerfs, const Rim& swept, const Frame& frame)
        : m_panel(project.panel), m_swept(swept), m_looked(frame), m_frame(lookedAt(frame)) {
        gatherOutside();
        gatherLines(arranged);
        gatherBands(arranged, kerfs);
        gatherBores(border);
    }

    VoidRim build() {
        for (const Curve& curve : m_swept.curves()) {
            curve.isArc ? addSweptArc(curve) : addSweptStraight(curve);
        }
        for (std::size_t band = 0; band < m_bands.size(); ++band) addBand(band);
        for (const Edge edge : kEdges) addPanelEdge(edge);
        for (const Bore& bore : m_bores) addBore(bore);
        addFrame();
        VoidRim made;
        made.rim = joinToRim(std::move(m_curves));
        made.sides = std::move(m_sides);
        made.doubts = std::move(m_doubts);
        for (const std::size_t end : made.rim.openEnds()) {
            made.doubts.push_back({made.rim.curves[end].to,
                                   "what the trimming bit and the kerfs left could not be closed here."});
        }
        return made;
    }

  private:
    void gatherBands(const Arranged& arranged, const std::vector<LaidKerf>& kerfs) {
        for (std::size_t k = 0; k < kerfs.size(); ++k) {
            const bool left = kerfs[k].kerf.side == Side::Left;
            const std::size_t line = kerfs[k].line;
            const ArrangedLine& laid = arranged.lines[line];
            if (!comesNear(m_looked, laid.from, laid.direction, kerfs[k].kerf.width)) continue;
            const VoidSide mouth{VoidSide::Kind::Mouth, line, 0, Edge::Bottom};
            const VoidSide farSide{VoidSide::Kind::FarSide, line, 0, Edge::Bottom};
            for (const auto& span : kerfs[k].inBand) {
                Band band{bandPart(arranged.lines[line], kerfs[k], span, static_cast<int>(k)), {}};
                band.sides = {left ? mouth : farSide, left ? farSide : mouth};
                band.sides.resize(band.part.bounds.size(), {VoidSide::Kind::KerfEnd, line, 0, Edge::Bottom});
                for (std::size_t i = 0; i < band.sides.size(); ++i)
                    m_supports.push_back({band.part.bounds[i], band.sides[i]});
                m_bands.push_back(std::move(band));
            }
        }
    }
    void gatherOutside() {
        for (const Edge edge : kEdges) {
            const HalfPlane half{markPlace(m_panel, {edge, 0}), -1.0 * edgeHeading(edge)};
            m_outside.push_back({{half}, kFacesOwner});
            m_supports.push_back({half, {VoidSide::Kind::PanelEdge, 0, 0, edge}});
        }
    }
    void gatherLines(const Arranged& arranged) {
        for (std::size_t i = 0; i < arranged.lines.size(); ++i) {
            const ArrangedLine& line = arranged.lines[i];
            for (const Point along : {line.direction, -1.0 * line.direction}) {
                m_supports.push_back({{line.from, along}, {VoidSide::Kind::Wall, i, 0, Edge::Bottom}});
            }
        }
    }
    void gatherBores(const Border& border) {
        for (std::size_t i = 0; i < border.corners.size(); ++i) {
            const Corner& corner = border.corners[i];
            if (corner.regime != Regime::Bored) continue;
            const Point in = unit(corner.point - corner.firstTangent);
            const Point out = -1.0 * leftOf(in);
            m_bores.push_back({corner.firstTangent + corner.radius * leftOf(in), corner.radius,
                               std::atan2(out.y, out.x), i});
        }
    }
    /// The line a straight piece of the sweep lies on, as exact as that is laid; its own where there is none.
    [[nodiscard]] Support supportOf(const Curve& piece) const {
        Support best{{piece.from, piece.tangentAt(0)}, {VoidSide::Kind::Bore, 0, 0, Edge::Bottom}};
        double least = kTouch;
        for (const Support& support : m_supports) {
            const HalfPlane& half = support.half;
            if (dot(half.direction, piece.to - piece.from) <= 0) continue;
            const double away = std::max(std::abs(cross(half.direction, piece.from - half.origin)),
                                         std::abs(cross(half.direction, piece.to - half.origin)));
            if (away >= least) continue;
            least = away;
            best = support;
        }
        return best;
    }

    void addSweptStraight(const Curve& piece) {
        const Support support = supportOf(piece);
        RimLine line{support.half.origin, support.half.direction, {}, kSweptOwner, {}, {}, support.side};
        line.spans = {{dot(line.along, piece.from - line.origin), dot(line.along, piece.to - line.origin)}};
        takeParts(line, m_bands.size());
        add(line);
    }

    void addSweptArc(const Curve& piece) {
        std::vector<double> marks{0, piece.size};
        markParts(piece, marks);
        addStretches(piece, marks, {VoidSide::Kind::Bore, 0, 0, Edge::Bottom},
                     [&](Point place) { return isOpen(place, nullptr); });
    }

    void addBand(std::size_t index) {
        const Band& band = m_bands[index];
        for (std::size_t i = 0; i < band.sides.size(); ++i) {
            RimLine line{band.part.bounds[i].origin,
                         band.part.bounds[i].direction,
                         {},
                         band.part.owner,
                         {},
                         {},
                         band.sides[i]};
            RimLine probe = line;
            probe.owner = band.part.owner + 1;  // so that its own side does not stop it
            const Cover whole = coverOf(probe, band.part);
            if (!whole.span) continue;
            line.spans = {*whole.span};
            keepInFrame(line);
            takeParts(line, index);
            takeSwept(line);
            add(line);
        }
    }

    void addPanelEdge(Edge edge) {
        RimLine line{markPlace(m_panel, {edge, 0}),
                     -1.0 * edgeHeading(edge),
                     {{-edgeLength(m_panel, edge), 0}},
                     kEdgeOwner,
                     {},
                     {},
                     {VoidSide::Kind::PanelEdge, 0, 0, edge}};
        keepInFrame(line);
        takeBands(line, m_bands.size());
        takeBores(line);
        takeSwept(line);
        add(line);
    }

    void addBore(const Bore& bore) {
        const Curve whole = arc(bore.centre, bore.radius, bore.start, kTurn, true);
        std::vector<double> marks{0, whole.size};
        markParts(whole, marks);
        m_swept.markOn(whole, marks);
        addStretches(whole, marks, {VoidSide::Kind::Bore, 0, bore.corner, Edge::Bottom}, [&](Point place) {
            return isOpen(place, &bore) || m_swept.isOnRim(place) || m_swept.holds(place);
        });
    }

    /// Where the frame cuts through what lies off the panel, or through a kerf, it closes it.
    void addFrame() {
        for (RimLine& line : endsOf(m_frame, kFrameOwner)) {
            RimLine wood = line;
            takeOutside(wood);
            takeBands(wood, m_bands.size());
            line.spans = without(std::move(line.spans), wood.spans);
            add(line);
        }
    }

    /// Takes out what the outside, kerfs (but for one) and bores cover.
    void takeParts(RimLine& line, std::size_t butForBand) {
        takeOutside(line);
        takeBands(line, butForBand);
        takeBores(line);
    }
    void takeOutside(RimLine& line) const {
        for (const ConvexPart& part : m_outside) take(line, coverOf(line, part));
    }
    void takeBands(RimLine& line, std::size_t butFor) {
        for (std::size_t i = 0; i < m_bands.size() && !line.spans.empty(); ++i) {
            if (i == butFor) continue;
            const Cover cover = coverOf(line, m_bands[i].part);
            take(line, cover);
            noteDoubt(line, cover);
        }
    }
    void takeBores(RimLine& line) const {
        for (const Bore& bore : m_bores) {
            takeDisc(line.spans, line, bore.centre, bore.radius, kTouch);
        }
    }
    void takeSwept(RimLine& line) const {
        if (line.spans.empty()) return;
        // First, and by itself: whether a move out of the line comes before its neighbour is the compiler's choice.
        const Spans covered = m_swept.coverOn(line);
        line.spans = without(std::move(line.spans), covered);
    }
    static void take(RimLine& line, const Cover& cover) {
        if (cover.span) takeOut(line.spans, cover.span->first, cover.span->second);
    }
    void noteDoubt(const RimLine& line, const Cover& cover) {
        if (!cover.doubtful) return;
        for (const auto& [a, b] : line.spans) {
            const double from = std::max(a, cover.doubtful->first);
            const double to = std::min(b, cover.doubtful->second);
            if (from >= to) continue;
            m_doubts.push_back({line.place((from + to) / 2),
                                "a kerf's wall lies within a millionth of a millimetre of what the"
                                " trimming bit left here; move one of the lines by 0.1 mm."});
            return;
        }
    }
    void keepInFrame(RimLine& line) const { keepLooked(line, m_frame); }

    void markParts(const Curve& curve, std::vector<double>& marks) const {
        const auto mark = [&](const ConvexPart& part) {
            const bool near = std::ranges::all_of(part.bounds, [&](const HalfPlane& half) {
                return cross(half.direction, curve.centre - half.origin) > -curve.radius;
            });
            if (!near) return;
            for (const HalfPlane& half : part.bounds) crossLine(curve, half.origin, half.direction, marks);
        };
        for (const Band& band : m_bands) mark(band.part);
        for (const ConvexPart& part : m_outside) mark(part);
        for (const Bore& bore : m_bores) crossCircle(curve, bore.centre, bore.radius, marks);
    }
    /// True where the outside, a kerf or a bore other than `own` is open round a place.
    [[nodiscard]] bool isOpen(Point place, const Bore* own) const {
        const auto holds = [&](const ConvexPart& part) { return isWithin(part.bounds, place, 0); };
        const auto bored = [&](const Bore& bore) {
            return &bore != own && distance(bore.centre, place) < bore.radius - kTouch;
        };
        return std::ranges::any_of(m_outside, holds) || std::ranges::any_of(m_bores, bored) ||
               std::ranges::any_of(m_bands, [&](const Band& band) { return holds(band.part); });
    }

    template <class Open>
    void addStretches(const Curve& curve, std::vector<double>& marks, const VoidSide& side,
                      const Open& isCovered) {
        std::ranges::sort(marks);
        Spans standing;
        for (std::size_t i = 0; i + 1 < marks.size(); ++i) {
            if (marks[i] < marks[i + 1] && !isCovered(curve.at((marks[i] + marks[i + 1]) / 2))) {
                addSpan(standing, marks[i], marks[i + 1]);
            }
        }
        for (const auto& [a, b] : standing) {
            if ((b - a) * curve.radius < kBite) continue;
            m_curves.push_back(curve.part(a, b));
            m_curves.back().tag = m_sides.size();
        }
        m_sides.push_back(side);
    }
    void add(const RimLine& line) { addCurves(line, m_curves, m_sides); }

    const Panel& m_panel;
    SweptRegion m_swept;
    const Frame& m_looked;
    Looked m_frame;
    std::vector<Band> m_bands;
    std::vector<ConvexPart> m_outside;
    std::vector<Bore> m_bores;
    std::vector<Support> m_supports;
    std::vector<Curve> m_curves;
    std::vector<VoidSide> m_sides;
    std::vector<Doubt> m_doubts;
};

}  // namespace

VoidRim trimmedVoidRim(const Project& project, const Arranged& arranged, const Border& border,
                       const std::vector<LaidKerf>& kerfs, const Rim& swept, const Frame& frame) {
    return TrimmedVoid(project, arranged, border, kerfs, swept, frame).build();
}

}  // namespace kerfwall
