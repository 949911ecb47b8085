// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/void_rim.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/geometry/angle.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/tolerance.h"
#include "core/geometry/void_parts.h"

namespace kerfwall {
namespace {

/// Gathers the rim of one cutout's void.
class RimBuilder {
  public:
    RimBuilder(const Project& project, const Arranged& arranged, const ArrangedCutout& cutout, const Border& border,
               const std::vector<LaidKerf>& kerfs, const Frame& frame)
        : m_arranged(arranged), m_cutout(cutout), m_border(border), m_kerfs(kerfs), m_looked(frame), m_frame(lookedAt(frame)),
          m_project(project), m_panel(project.panel) {}

    VoidRim build() {
        gatherParts();
        for (std::size_t i = 0; i < m_arranged.lines.size(); ++i) {
            const ArrangedLine& line = m_arranged.lines[i];
            if (line.cut && comesNear(m_looked, line.from, line.direction, 0)) addWallsAndMouths(i);
        }
        for (std::size_t k = 0; k < m_kerfs.size(); ++k) {
            if (isLookedAt(m_kerfs[k])) addFarSideAndEnds(k);
        }
        for (const Edge edge : kEdges) addPanelEdge(edge);
        addBores();
        addFrame();
        VoidRim made;
        made.rim = joinToRim(std::move(m_curves));
        made.sides = std::move(m_sides);
        made.doubts = std::move(m_doubts);
        for (const std::size_t end : made.rim.openEnds()) {
            made.doubts.push_back({made.rim.curves[end].to, "the walls left by the kerfs could not be closed here."});
        }
        made.rim = made.rim.withoutStubs();
        for (const auto& loop : made.rim.loops()) {
            if (made.rim.lengthOf(loop) > kJoin) continue;
            made.doubts.push_back({made.rim.curves[loop.front()].to,
                                   "the kerfs leave a crumb of wood too small to tell here; move one of the lines by 0.1 mm."});
        }
        return made;
    }

  private:
    [[nodiscard]] const Spans& spansOf(const LaidKerf& kerf) const {
        return kerf.below;
    }
    [[nodiscard]] bool isLookedAt(const LaidKerf& kerf) const {
        const ArrangedLine& line = m_arranged.lines[kerf.line];
        return comesNear(m_looked, line.from, line.direction, kerf.kerf.width);
    }
    void gatherParts() {
        for (const ArrangedFace& face : m_cutout.faces) m_faces.push_back({face.bounds, kFacesOwner});
        for (std::size_t k = 0; k < m_kerfs.size(); ++k) {
            if (!isLookedAt(m_kerfs[k])) continue;
            for (const auto& span : spansOf(m_kerfs[k])) {
                m_bands.push_back({bandPart(m_arranged.lines[m_kerfs[k].line], m_kerfs[k], span, static_cast<int>(k)), k});
            }
        }
        for (const Edge edge : kEdges) {
            m_outside.push_back({{{markPlace(m_panel, {edge, 0}), -1.0 * edgeHeading(edge)}}, kFacesOwner});
        }
        for (std::size_t i = 0; i < m_border.corners.size(); ++i) {
            const Corner& corner = m_border.corners[i];
            if (corner.regime != Regime::Bored) continue;
            // From the lines, not from the tangent points: at a flat corner those are one place.
            const Point in = headingOf(i, &Wall::endCorner);
            const Point out = headingOf(i, &Wall::startCorner);
            const Point chord = -1.0 * unit(in + out);
            Spandrel spandrel;
            spandrel.corner = i;
            spandrel.triangle.bounds = {{corner.point, in}, {corner.point, out}, {corner.secondTangent, chord}};
            spandrel.centre = corner.firstTangent + corner.radius * leftOf(in);
            spandrel.radius = corner.radius;
            m_spandrels.push_back(std::move(spandrel));
        }
    }

    /// The border's heading along the wall that has this corner at that end.
    [[nodiscard]] Point headingOf(std::size_t corner, std::optional<std::size_t> Wall::*end) const {
        const auto wall = std::ranges::find(m_border.walls, std::optional(corner), end);
        const auto onLine = [&](const ArrangedLine& line) { return m_project.lines[line.index].id == wall->line; };
        const Point along = std::ranges::find_if(m_arranged.lines, onLine)->direction;
        return wall->waste == Side::Left ? along : -1.0 * along;
    }

    /// The stretches of a line on the faces, without what bores leave standing.
    [[nodiscard]] Spans facesOn(const RimLine& line) {
        Spans covered;
        for (const ConvexPart& face : m_faces) {
            const Cover cover = coverOf(line, face);
            if (cover.span) addSpan(covered, cover.span->first, cover.span->second);
            noteDoubt(cover, line);
        }
        for (const Spandrel& spandrel : m_spandrels) {
            const Cover cover = coverOf(line, spandrel.triangle);
            if (!cover.span) continue;
            Spans standing{*cover.span};
            for (const Spandrel& bore : m_spandrels) takeDisc(standing, line, bore.centre, bore.radius, kBite);
            covered = without(std::move(covered), standing);
        }
        return covered;
    }

    void takeBores(RimLine& line) const {
        for (const Spandrel& bore : m_spandrels) takeDisc(line.spans, line, bore.centre, bore.radius, kBite);
    }

    void noteDoubt(const Cover& cover, const RimLine& line) {
        if (!cover.doubtful) return;
        Spans rest = line.spans;
        takeOut(rest, -kEverywhere, cover.doubtful->first);
        takeOut(rest, cover.doubtful->second, kEverywhere);
        if (rest.empty()) return;
        m_doubts.push_back({line.place((rest.front().first + rest.front().second) / 2),
                            "two kerf walls lie within a millionth of a millimetre of one another here; move one of the"
                            " lines by 0.1 mm."});
    }

    void takeBands(RimLine& line) {
        for (const auto& [part, kerf] : m_bands) {
            if (kerf == line.ownKerf || m_kerfs[kerf].line == line.ownLine) continue;
            noteDoubt(takePart(line, part), line);
            if (line.spans.empty()) return;
        }
    }

    void takeOutside(RimLine& line) const {
        for (const ConvexPart& part : m_outside) takePart(line, part);
    }

    static Cover takePart(RimLine& line, const ConvexPart& part) {
        Cover cover = coverOf(line, part);
        if (cover.span) takeOut(line.spans, cover.span->first, cover.span->second);
        return cover;
    }

    void keepInFrame(RimLine& line) const { keepLooked(line, m_frame); }

    void add(const RimLine& line) { addCurves(line, m_curves, m_sides); }

    [[nodiscard]] Spans wallSpans(std::size_t lineIndex, Side side) const {
        const ArrangedLine& line = m_arranged.lines[lineIndex];
        Spans spans;
        for (const Wall& wall : m_border.walls) {
            if (wall.waste != side || wall.line != lineId(m_project, m_arranged, lineIndex)) continue;
            const Point from = trimmed(wall.startCorner, wall.from, false);
            const Point to = trimmed(wall.endCorner, wall.to, true);
            double a = dot(from - line.from, line.direction);
            double b = dot(to - line.from, line.direction);
            if (side == Side::Right) std::swap(a, b);
            addSpan(spans, a, b);
        }
        return spans;
    }
    /// A wall's end, drawn back to where a bore touches it.
    [[nodiscard]] Point trimmed(const std::optional<std::size_t>& corner, Point end, bool arrives) const {
        if (!corner) return end;
        const Corner& met = m_border.corners[*corner];
        if (met.regime != Regime::Bored) return end;
        return arrives ? met.firstTangent : met.secondTangent;
    }

    [[nodiscard]] Spans innerSpans(std::size_t lineIndex) const {
        const ArrangedLine& line = m_arranged.lines[lineIndex];
        Spans spans;
        for (const InnerRun& run : m_cutout.inner) {
            if (run.line != lineIndex) continue;
            addSpan(spans, dot(run.from - line.from, line.direction), dot(run.to - line.from, line.direction));
        }
        return spans;
    }

    void addWallsAndMouths(std::size_t lineIndex) {
        const ArrangedLine& line = m_arranged.lines[lineIndex];
        std::array<Spans, 2> walls{wallSpans(lineIndex, Side::Left), wallSpans(lineIndex, Side::Right)};
        std::array<Spans, 2> bands;
        int owner = kFacesOwner;
        for (std::size_t k = 0; k < m_kerfs.size(); ++k) {
            if (m_kerfs[k].line != lineIndex) continue;
            owner = static_cast<int>(k);
            Spans& spans = bands[m_kerfs[k].kerf.side == Side::Left ? 0 : 1];
            for (const auto& [a, b] : spansOf(m_kerfs[k])) addSpan(spans, a, b);
        }
        if (walls[0].empty() && walls[1].empty() && bands[0].empty() && bands[1].empty()) return;
        const Spans inner = innerSpans(lineIndex);
        for (std::size_t side = 0; side < 2; ++side) {
            Spans beyond = inner;
            for (const Spans* other : {&walls[1 - side], &bands[1 - side]}) {
                for (const auto& [a, b] : *other) addSpan(beyond, a, b);
            }
            const Spans wall = without(walls[side], beyond);
            const Spans mouth = without(without(bands[side], beyond), walls[side]);
            const bool left = side == 0;
            addNear(line, lineIndex, left, wall, kFacesOwner, VoidSide::Kind::Wall);
            addNear(line, lineIndex, left, mouth, owner, VoidSide::Kind::Mouth);
        }
    }

    void addNear(const ArrangedLine& line, std::size_t lineIndex, bool left, const Spans& spans, int owner,
                 VoidSide::Kind kind) {
        if (spans.empty()) return;
        RimLine rim{line.from, left ? line.direction : -1.0 * line.direction, {}, owner, lineIndex, {},
                    {kind, lineIndex, 0, Edge::Bottom}};
        for (const auto& [a, b] : spans) addSpan(rim.spans, left ? a : -b, left ? b : -a);
        takeOutside(rim);
        keepInFrame(rim);
        takeBands(rim);
        takeBores(rim);
        add(rim);
    }

    void addFarSideAndEnds(std::size_t k) {
        const LaidKerf& kerf = m_kerfs[k];
        const ArrangedLine& line = m_arranged.lines[kerf.line];
        const bool left = kerf.kerf.side == Side::Left;
        const Point n = leftOf(line.direction);
        const double away = left ? kerf.kerf.width : -kerf.kerf.width;
        const int owner = static_cast<int>(k);
        RimLine far{line.from + away * n, left ? -1.0 * line.direction : line.direction, {}, owner,
                    {}, k, {VoidSide::Kind::FarSide, kerf.line, 0, Edge::Bottom}};
        for (const auto& [a, b] : spansOf(kerf)) addSpan(far.spans, left ? -b : a, left ? -a : b);
        finish(std::move(far));
        for (const auto& [a, b] : spansOf(kerf)) {
            const double low = left ? 0 : -kerf.kerf.width;
            const double high = left ? kerf.kerf.width : 0;
            const VoidSide side{VoidSide::Kind::KerfEnd, kerf.line, 0, Edge::Bottom};
            if (b < kPastThePanel) {
                finish({line.from + b * line.direction, n, {{low, high}}, owner, {}, k, side});
            }
            if (a > -kPastThePanel) {
                finish({line.from + a * line.direction, -1.0 * n, {{-high, -low}}, owner, {}, k, side});
            }
        }
    }

    /// What a kerf's inner side or end leaves when faces, bores, other kerfs and the outside have taken theirs.
    void finish(RimLine rim) {
        takeOutside(rim);
        keepInFrame(rim);
        if (rim.spans.empty()) return;
        const Spans onFaces = facesOn(rim);
        rim.spans = without(std::move(rim.spans), onFaces);
        takeBands(rim);
        takeBores(rim);
        add(rim);
    }

    void addPanelEdge(Edge edge) {
        RimLine rim{markPlace(m_panel, {edge, 0}), -1.0 * edgeHeading(edge), {{-edgeLength(m_panel, edge), 0}},
                    kFacesOwner - 1, {}, {}, {VoidSide::Kind::PanelEdge, 0, 0, edge}};
        keepInFrame(rim);
        if (rim.spans.empty()) return;
        const Spans onFaces = facesOn(rim);
        rim.spans = without(std::move(rim.spans), onFaces);
        takeBands(rim);
        takeBores(rim);
        add(rim);
    }

    /// A bore's whole circle counts, also where it reaches past another wall of the cutout.
    void addBores() {
        for (const Spandrel& bore : m_spandrels) {
            const Point start = m_border.corners[bore.corner].firstTangent - bore.centre;
            const Curve whole = arc(bore.centre, bore.radius, std::atan2(start.y, start.x), kTurn, true);
            for (const auto& [a, b] : woodOn(bore, whole)) {
                if ((b - a) * bore.radius < kBite) continue;
                Curve piece = whole.part(a, b);
                piece.tag = m_sides.size();
                m_curves.push_back(piece);
            }
            m_sides.push_back({VoidSide::Kind::Bore, 0, bore.corner, Edge::Bottom});
        }
    }

    /// The bore a place on a circle is the rim of. Where two bores are one circle, as round the end of a slot, that
    /// is the one in whose corner the place lies.
    [[nodiscard]] const Spandrel* ownerOf(const Spandrel& bore, Point place) const {
        const Spandrel* first = nullptr;
        for (const Spandrel& other : m_spandrels) {
            const bool same = distance(other.centre, bore.centre) < kSameSide &&
                              std::abs(other.radius - bore.radius) < kSameSide;
            if (!same) continue;
            if (isWithin(other.triangle.bounds, place, 0)) return &other;
            if (!first) first = &other;
        }
        return first;
    }

    /// The stretches of a bore's circle beyond which wood stands.
    [[nodiscard]] Spans woodOn(const Spandrel& bore, const Curve& circle) const {
        std::vector<double> marks{0, circle.size};
        const auto mark = [&](const ConvexPart& part) {
            for (const HalfPlane& half : part.bounds) meetLine(circle, half.origin, half.direction, marks);
        };
        for (const ConvexPart& face : m_faces) mark(face);
        for (const ConvexPart& part : m_outside) mark(part);
        for (const auto& [part, kerf] : m_bands) mark(part);
        for (const Spandrel& other : m_spandrels) {
            mark(other.triangle);
            if (other.centre != circle.centre) meetCircle(circle, other.centre, other.radius, marks);
        }
        std::ranges::sort(marks);
        Spans wood;
        for (std::size_t i = 0; i + 1 < marks.size(); ++i) {
            const Point middle = circle.at((marks[i] + marks[i + 1]) / 2);
            if (!isFree(middle) && ownerOf(bore, middle) == &bore) addSpan(wood, marks[i], marks[i + 1]);
        }
        return wood;
    }

    /// True where the void goes on round a place, deeper than kBite.
    [[nodiscard]] bool isFree(Point place) const {
        const auto holds = [&](const ConvexPart& part) { return isWithin(part.bounds, place, kBite); };
        const bool inBore = std::ranges::any_of(m_spandrels, [&](const Spandrel& bore) {
            return distance(bore.centre, place) < bore.radius - kBite;
        });
        if (inBore || std::ranges::any_of(m_outside, holds)) return true;
        if (std::ranges::any_of(m_bands, [&](const auto& band) { return holds(band.first); })) return true;
        const bool standing = std::ranges::any_of(m_spandrels, [&](const Spandrel& bore) { return holds(bore.triangle); });
        return !standing && std::ranges::any_of(m_faces, holds);
    }

    /// Where the frame cuts through the void it closes it.
    void addFrame() {
        for (RimLine& rim : endsOf(m_frame, kFacesOwner - 2)) {
            Spans free = facesOn(rim);
            RimLine probe = rim;
            probe.owner = static_cast<int>(m_kerfs.size());
            for (const ConvexPart& part : m_outside) {
                if (const Cover cover = coverOf(probe, part); cover.span) addSpan(free, cover.span->first, cover.span->second);
            }
            for (const auto& [part, kerf] : m_bands) {
                if (const Cover cover = coverOf(probe, part); cover.span) addSpan(free, cover.span->first, cover.span->second);
            }
            const Spans closed = without(rim.spans, free);
            rim.spans = without(std::move(rim.spans), closed);
            add(rim);
        }
    }

    const Arranged& m_arranged;
    const ArrangedCutout& m_cutout;
    const Border& m_border;
    const std::vector<LaidKerf>& m_kerfs;
    const Frame& m_looked;  ///< the world that is looked at
    Looked m_frame;         ///< as parts
    const Project& m_project;
    const Panel& m_panel;
    std::vector<ConvexPart> m_faces;
    std::vector<std::pair<ConvexPart, std::size_t>> m_bands;
    std::vector<ConvexPart> m_outside;
    std::vector<Spandrel> m_spandrels;
    std::vector<Curve> m_curves;
    std::vector<VoidSide> m_sides;
    std::vector<Doubt> m_doubts;
};

}  // namespace

VoidRim voidRim(const Project& project, const Arranged& arranged, const ArrangedCutout& cutout, const Border& border,
                const std::vector<LaidKerf>& kerfs, const Frame& frame) {
    return RimBuilder(project, arranged, cutout, border, kerfs, frame).build();
}

}  // namespace kerfwall
