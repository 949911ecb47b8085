// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/arranged.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "core/geometry/laid_lines.h"
#include "core/geometry/solve.h"
#include "core/geometry/tolerance.h"
#include "core/says/line_names.h"

namespace kerfwall {
namespace {

/// One side of a face in the making: it runs from `from` to the next side's `from`.
struct FaceSide {
    Bound on;
    ExactPoint from;
};
using ExactFace = std::vector<FaceSide>;

struct ExactArrangement {
    ExactPanel panel;
    std::vector<ExactLine> lines;      ///< beside Arranged::lines
    std::vector<std::size_t> cutting;  ///< those that are cut

    [[nodiscard]] const ExactLine& lineOf(const Bound& on) const {
        return on.line ? lines[*on.line] : panel.edge(on.edge);
    }
};

/// Cuts a convex face by a line and keeps the side that has `kept`'s sign.
void cutFace(ExactFace& face, std::size_t line, CGAL::Sign kept, const ExactArrangement& all) {
    const ExactLine& cut = all.lines[line];
    std::vector<CGAL::Sign> sides;
    sides.reserve(face.size());
    for (const FaceSide& side : face) sides.push_back(cut.sideOf(side.from));
    if (std::find(sides.begin(), sides.end(), -kept) == sides.end()) return;
    ExactFace left;
    for (std::size_t i = 0; i < face.size(); ++i) {
        const std::size_t next = (i + 1) % face.size();
        const bool fromIn = sides[i] == kept;
        const bool toOut = sides[next] == -kept;
        if (sides[i] != -kept) {
            // A corner on the line stays; from there the border either goes on inside or along the line.
            const bool leavesHere = sides[i] == CGAL::ZERO && sides[next] != kept;
            left.push_back({leavesHere ? Bound{line, {}} : face[i].on, face[i].from});
            if (fromIn && toOut) left.push_back({Bound{line, {}}, crossingOf(cut, all.lineOf(face[i].on))});
        } else if (sides[next] == kept) {
            left.push_back({face[i].on, crossingOf(cut, all.lineOf(face[i].on))});
        }
    }
    face = std::move(left);
}

/// The face round a seed, or the line or edge it lies on, or nothing where it is off the panel.
struct FaceFound {
    std::optional<ExactFace> face;
    std::optional<std::size_t> onLine;
};

FaceFound faceRound(const ExactPoint& seed, const ExactArrangement& all) {
    for (const ExactLine& edge : all.panel.edges) {
        if (edge.sideOf(seed) != CGAL::POSITIVE) return {};
    }
    ExactFace face;
    for (const Edge e : kEdges) face.push_back({Bound{std::nullopt, e}, all.panel.edge(e).p});
    for (const std::size_t line : all.cutting) {
        const CGAL::Sign side = all.lines[line].sideOf(seed);
        if (side == CGAL::ZERO) return {std::nullopt, line};
        cutFace(face, line, side, all);
    }
    return {face, std::nullopt};
}

bool isSame(const ExactPoint& a, const ExactPoint& b) { return a.x == b.x && a.y == b.y; }

/// A side of a face with its neighbour across, where that belongs to the same cutout.
struct HalfSide {
    std::size_t face;
    std::size_t side;
    std::optional<std::size_t> twin;
    bool done = false;
};

class FaceJoiner {
  public:
    FaceJoiner(const std::vector<ExactFace>& faces, const ExactArrangement& all) : m_faces(faces), m_all(all) {
        for (std::size_t f = 0; f < faces.size(); ++f) {
            m_first.push_back(m_sides.size());
            for (std::size_t s = 0; s < faces[f].size(); ++s) m_sides.push_back({f, s, std::nullopt});
        }
        pairTwins();
    }

    [[nodiscard]] std::vector<InnerRun> innerRuns() const {
        std::vector<InnerRun> runs;
        for (std::size_t h = 0; h < m_sides.size(); ++h) {
            if (m_sides[h].twin && isAlong(h)) {
                runs.push_back({*side(h).on.line, rounded(side(h).from), rounded(end(h))});
            }
        }
        return runs;
    }

    [[nodiscard]] std::vector<std::vector<BorderRun>> loops() {
        std::vector<std::vector<BorderRun>> found;
        for (std::size_t h = 0; h < m_sides.size(); ++h) {
            if (m_sides[h].twin || m_sides[h].done) continue;
            std::vector<BorderRun> loop;
            for (std::size_t at = h; !m_sides[at].done; at = nextOnBorder(at)) {
                m_sides[at].done = true;
                addRun(loop, {side(at).on, rounded(side(at).from), rounded(end(at)), isAlong(at)});
            }
            if (loop.size() > 1 && loop.front().on == loop.back().on) {
                loop.front().from = loop.back().from;
                loop.pop_back();
            }
            std::erase_if(loop, [](const BorderRun& run) {
                return run.on.line && distance(run.from, run.to) < kShortestWall;
            });
            found.push_back(std::move(loop));
        }
        return found;
    }

  private:
    [[nodiscard]] const FaceSide& side(std::size_t h) const { return m_faces[m_sides[h].face][m_sides[h].side]; }
    [[nodiscard]] std::size_t next(std::size_t h) const {
        const std::size_t count = m_faces[m_sides[h].face].size();
        return m_first[m_sides[h].face] + (m_sides[h].side + 1) % count;
    }
    [[nodiscard]] const ExactPoint& end(std::size_t h) const { return side(next(h)).from; }
    [[nodiscard]] std::size_t nextOnBorder(std::size_t h) const {
        std::size_t at = next(h);
        while (m_sides[at].twin) at = next(*m_sides[at].twin);
        return at;
    }
    /// A face lies on the left of its sides: a side runs along its line where the face is on its left.
    [[nodiscard]] bool isAlong(std::size_t h) const {
        const ExactLine& line = m_all.lineOf(side(h).on);
        return CGAL::is_positive((end(h).x - side(h).from.x) * line.dx + (end(h).y - side(h).from.y) * line.dy);
    }
    static void addRun(std::vector<BorderRun>& loop, BorderRun run) {
        if (!loop.empty() && loop.back().on == run.on) {
            loop.back().to = run.to;
        } else {
            loop.push_back(std::move(run));
        }
    }
    void pairTwins() {
        std::map<std::size_t, std::vector<std::size_t>> byLine;
        for (std::size_t h = 0; h < m_sides.size(); ++h) {
            if (side(h).on.line) byLine[*side(h).on.line].push_back(h);
        }
        for (const auto& [line, sides] : byLine) {
            for (std::size_t i = 0; i < sides.size(); ++i) {
                for (std::size_t j = i + 1; j < sides.size(); ++j) {
                    const std::size_t a = sides[i];
                    const std::size_t b = sides[j];
                    if (isSame(side(a).from, end(b)) && isSame(end(a), side(b).from)) {
                        m_sides[a].twin = b;
                        m_sides[b].twin = a;
                    }
                }
            }
        }
    }

    const std::vector<ExactFace>& m_faces;
    const ExactArrangement& m_all;
    std::vector<HalfSide> m_sides;
    std::vector<std::size_t> m_first;
};

double areaOf(const ExactFace& face) {
    Number twice = 0;
    for (std::size_t i = 0; i < face.size(); ++i) {
        const ExactPoint& a = face[i].from;
        const ExactPoint& b = face[(i + 1) % face.size()].from;
        twice += a.x * b.y - a.y * b.x;
    }
    return rounded(twice) / 2;
}

/// True where from -> to runs in the line's own direction.
bool runsAlong(const ExactLine& line, const ExactPoint& from, const ExactPoint& to) {
    return CGAL::is_positive((to.x - from.x) * line.dx + (to.y - from.y) * line.dy);
}

ArrangedFace plainFace(const ExactFace& face, const ExactArrangement& all) {
    ArrangedFace plain;
    for (std::size_t i = 0; i < face.size(); ++i) {
        const ExactPoint& a = face[i].from;
        const ExactPoint& b = face[(i + 1) % face.size()].from;
        const ExactLine& line = all.lineOf(face[i].on);
        const bool along = runsAlong(line, a, b);
        plain.corners.push_back(rounded(a));
        // The origin is the corner; the direction is the line's own, sharp however short the side.
        plain.bounds.push_back({plain.corners.back(), along ? line.direction() : -1.0 * line.direction()});
    }
    return plain;
}

bool isWithin(const ExactPoint& place, const ExactFace& face, const ExactArrangement& all) {
    for (std::size_t i = 0; i < face.size(); ++i) {
        const ExactPoint& a = face[i].from;
        const ExactPoint& b = face[(i + 1) % face.size()].from;
        const ExactLine& line = all.lineOf(face[i].on);
        const bool along = runsAlong(line, a, b);
        if (line.sideOf(place) != (along ? CGAL::POSITIVE : CGAL::NEGATIVE)) return false;
    }
    return true;
}

std::string linePointer(std::size_t index) { return "/lines/" + std::to_string(index); }

/// Where the trouble of a line without a place shows: on the first line it is laid from, else in the panel's middle.
Point placeBesideNothing(const Project& project, const Arranged& plain, const LayoutLine& said) {
    for (const LineId& named : linesNamedBy(said.place)) {
        for (const ArrangedLine& line : plain.lines) {
            if (project.lines[line.index].id == named) return 0.5 * (line.from + line.to);
        }
    }
    return {project.panel.width / 2, project.panel.height / 2};
}

/// Keeps a line that misses the panel, to be shown beside it; gives the place on the panel nearest to it.
Point addStray(Arranged& plain, const Panel& panel, const LineId& id, std::size_t index, Point through, Point along) {
    constexpr double kBesideShare = 0.1;  // of the panel's sides that the stretch runs past them
    const std::array<Point, 4> corners{{{0, 0}, {panel.width, 0}, {panel.width, panel.height}, {0, panel.height}}};
    const auto away = [&](Point corner) { return std::abs(cross(along, corner - through)); };
    const Point nearest = *std::ranges::min_element(corners, {}, away);
    Point middle{};
    double count = 0, low = INFINITY, high = -INFINITY;
    for (const Point corner : corners) {
        low = std::min(low, dot(along, corner - through));
        high = std::max(high, dot(along, corner - through));
        if (away(corner) - away(nearest) > kShortestWall) continue;  // beside an edge two corners are as near
        middle = middle + corner;
        ++count;
    }
    const double past = kBesideShare * (panel.width + panel.height);
    plain.strays.push_back({id, index, through + (low - past) * along, through + (high + past) * along});
    return (1 / count) * middle;
}

/// Lines of the project as they lie on the panel; troubles for those that do not, or lie on another.
ExactArrangement arrangeLines(const Project& project, Arranged& plain) {
    ExactArrangement all{ExactPanel(project.panel), {}, {}};
    const auto laid = laidLines(project, all.panel);
    for (std::size_t i = 0; i < project.lines.size(); ++i) {
        const LayoutLine& said = project.lines[i];
        const std::optional<ExactLine>& line = laid[i];
        if (!line) {
            plain.troubles.push_back({linePointer(i) + "/place",
                                      "line " + said.id + " has no place: the lines it is laid from do not cross, or"
                                      " one of them has no place itself; lay it from another line or point.",
                                      placeBesideNothing(project, plain, said), {said.id}, {}});
            continue;
        }
        const auto chord = chordOf(*line, all.panel);
        if (!chord) {
            plain.troubles.push_back({linePointer(i) + "/place",
                                      "line " + said.id + " has no length inside the panel; move it so that it"
                                      " crosses the panel between two edges.",
                                      addStray(plain, project.panel, said.id, i, rounded(line->p), line->direction()), {said.id}, {}});
            continue;
        }
        const auto twin = std::find_if(all.lines.begin(), all.lines.end(), [&](const ExactLine& other) {
            return turnBetween(other, *line) == CGAL::ZERO && other.sideOf(line->p) == CGAL::ZERO;
        });
        if (twin != all.lines.end()) {
            const auto& first = lineId(project, plain, static_cast<std::size_t>(twin - all.lines.begin()));
            plain.strays.push_back({said.id, i, rounded(chord->from), rounded(chord->to)});
            plain.troubles.push_back({linePointer(i) + "/place",
                                      "lines " + first + " and " + said.id + " lie on one another; move or delete one"
                                      " of them.",
                                      0.5 * (rounded(chord->from) + rounded(chord->to)), {first, said.id}, {}});
            continue;
        }
        ArrangedLine placed{i, rounded(chord->from), rounded(chord->to), line->direction(), said.cut, {}};
        placed.marks = marksAt(chord->from, all.panel);
        std::ranges::copy(marksAt(chord->to, all.panel), std::back_inserter(placed.marks));
        if (said.cut) all.cutting.push_back(plain.lines.size());
        plain.lines.push_back(std::move(placed));
        all.lines.push_back(*line);
    }
    return all;
}

struct OwnedFace {
    std::size_t cutout;
    ExactFace face;
};

/// The faces of one cutout, or nothing and a trouble.
std::optional<std::vector<ExactFace>> facesOf(const Project& project, std::size_t index, const ExactArrangement& all,
                                              const std::vector<OwnedFace>& taken, Arranged& plain) {
    const Cutout& cutout = project.cutouts[index];
    std::vector<ExactFace> faces;
    for (std::size_t s = 0; s < cutout.seeds.size(); ++s) {
        const std::string pointer = "/cutouts/" + std::to_string(index) + "/seeds/" + std::to_string(s);
        const ExactPoint seed = exactly(cutout.seeds[s]);
        FaceFound found = faceRound(seed, all);
        const auto refuse = [&](const std::string& why, std::vector<LineId> lines) {
            plain.troubles.push_back({pointer, why, cutout.seeds[s], std::move(lines), cutout.id});
            return std::nullopt;
        };
        if (found.onLine) {
            const LineId& line = lineId(project, plain, *found.onLine);
            return refuse("a seed of cutout " + cutout.id + " lies on line " + line + "; put it inside the waste.", {line});
        }
        if (!found.face) {
            return refuse("a seed of cutout " + cutout.id + " lies on an edge or outside the panel; put it inside the waste.", {});
        }
        const auto owner = std::ranges::find_if(
            taken, [&](const OwnedFace& other) { return isWithin(seed, other.face, all); });
        if (owner != taken.end()) {
            return refuse("cutouts " + project.cutouts[owner->cutout].id + " and " + cutout.id +
                              " share a face; leave it to one of them.", {});
        }
        if (std::ranges::none_of(faces, [&](const ExactFace& own) { return isWithin(seed, own, all); })) {
            faces.push_back(std::move(*found.face));
        }
    }
    return faces;
}

}  // namespace

bool isWithin(const std::vector<HalfPlane>& bounds, Point place, double margin) {
    return std::ranges::all_of(
        bounds, [&](const HalfPlane& half) { return cross(half.direction, place - half.origin) > margin; });
}

const LineId& lineId(const Project& project, const Arranged& arranged, std::size_t line) {
    return project.lines[arranged.lines[line].index].id;
}

Arranged arrange(const Project& project) {
    Arranged plain;
    const ExactArrangement all = arrangeLines(project, plain);
    std::vector<OwnedFace> taken;
    for (std::size_t i = 0; i < project.cutouts.size(); ++i) {
        const auto faces = facesOf(project, i, all, taken, plain);
        if (!faces || faces->empty()) continue;
        ArrangedCutout cutout;
        cutout.index = i;
        FaceJoiner joiner(*faces, all);
        cutout.inner = joiner.innerRuns();
        cutout.loops = joiner.loops();
        for (const ExactFace& face : *faces) {
            cutout.faces.push_back(plainFace(face, all));
            cutout.area += areaOf(face);
            taken.push_back({i, face});
        }
        plain.cutouts.push_back(std::move(cutout));
    }
    return plain;
}

std::optional<std::string> faceAt(const Project& project, Point place) {
    Arranged plain;
    const ExactArrangement all = arrangeLines(project, plain);
    const ExactPoint at = exactly(place);
    for (const ExactLine& edge : all.panel.edges) {
        if (edge.sideOf(at) != CGAL::POSITIVE) return std::nullopt;
    }
    std::string name;
    for (const std::size_t line : all.cutting) {
        const CGAL::Sign side = all.lines[line].sideOf(at);
        if (side == CGAL::ZERO) return std::nullopt;
        name += side == CGAL::POSITIVE ? '+' : '-';
    }
    return name;
}

std::vector<Point> facePolygon(const Project& project, Point place) {
    Arranged plain;
    const ExactArrangement all = arrangeLines(project, plain);
    const FaceFound found = faceRound(exactly(place), all);
    return found.face ? plainFace(*found.face, all).corners : std::vector<Point>{};
}

}  // namespace kerfwall
