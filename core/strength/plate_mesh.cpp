// SPDX-License-Identifier: GPL-3.0-or-later
// A shape that is degenerate beyond what the triangulation bears is to be told of, in a release too.
#define CGAL_DEBUG 1
#include "core/strength/plate_mesh.h"

#include <CGAL/Constrained_Delaunay_triangulation_2.h>
#include <CGAL/Delaunay_mesh_face_base_2.h>
#include <CGAL/Delaunay_mesh_size_criteria_2.h>
#include <CGAL/Delaunay_mesh_vertex_base_2.h>
#include <CGAL/Delaunay_mesher_2.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>

#include "core/geometry/clip.h"

namespace kerfwall {
namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using VertexBase = CGAL::Delaunay_mesh_vertex_base_2<Kernel>;
using FaceBase = CGAL::Delaunay_mesh_face_base_2<Kernel>;
using Structure = CGAL::Triangulation_data_structure_2<VertexBase, FaceBase>;
using Triangulation = CGAL::Constrained_Delaunay_triangulation_2<Kernel, Structure, CGAL::Exact_predicates_tag>;
using Criteria = CGAL::Delaunay_mesh_size_criteria_2<Triangulation>;
using Mesher = CGAL::Delaunay_mesher_2<Triangulation, Criteria>;
using Face = Triangulation::Face_handle;

constexpr double kArcStep = std::numbers::pi / 6;  // a corner of the bit's radius bears no load of its own
constexpr double kGrid = 1e-3;                     // mm: nearer places are one
constexpr double kOnIt = 2e-3;                     // mm
constexpr double kLeastHeight = 1e-5;              // mm: flatter triangles are no triangles
constexpr double kLeastAngle = 0.125;              // square of the sine: 20.7 degrees
constexpr std::size_t kMostPoints = 30000;         // a shape that needs more is too fine
constexpr int kThicknessSteps = 8;                 // of a triangle's side, where its thickness is looked at

using Polygon = std::vector<Point>;

Point onGrid(Point at) { return {std::round(at.x / kGrid) * kGrid, std::round(at.y / kGrid) * kGrid}; }

Polygon flattened(const OutlineLoop& loop) {
    Polygon polygon;
    for (const OutlinePiece& piece : loop) {
        polygon.push_back(onGrid(piece.from));
        if (!piece.isArc) continue;
        const double sweep = sweepOf(piece) * (piece.turn == Turn::Left ? 1 : -1);
        const int parts = std::max(1, static_cast<int>(std::ceil(std::abs(sweep) / kArcStep)));
        const double start = std::atan2(piece.from.y - piece.centre.y, piece.from.x - piece.centre.x);
        for (int i = 1; i < parts; ++i) {
            const double at = start + sweep * i / parts;
            polygon.push_back(onGrid(piece.centre + piece.radius * Point{std::cos(at), std::sin(at)}));
        }
    }
    return polygon;
}

bool isIn(const std::vector<Polygon>& polygons, Point place) {
    bool inside = false;
    for (const Polygon& polygon : polygons) {
        for (std::size_t i = 0, last = polygon.size() - 1; i < polygon.size(); last = i++) {
            const Point a = polygon[last];
            const Point b = polygon[i];
            if ((a.y > place.y) != (b.y > place.y) && place.x < a.x + (place.y - a.y) / (b.y - a.y) * (b.x - a.x)) inside = !inside;
        }
    }
    return inside;
}

bool isInConvex(const Polygon& corners, Point place) {
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Point a = corners[i];
        const Point b = corners[(i + 1) % corners.size()];
        if (distance(a, b) > 0 && cross(unit(b - a), place - a) < -kOnIt) return false;
    }
    return true;
}

bool isOn(Point a, Point b, Point place) {
    const double whole = distance(a, b);
    if (whole < kOnIt) return distance(a, place) < kOnIt;
    const Point along = (1 / whole) * (b - a);
    const double at = dot(along, place - a);
    return std::abs(cross(along, place - a)) < kOnIt && at > -kOnIt && at < whole + kOnIt;
}

class PlateMesher {
  public:
    PlateMesher(const PlateShape& shape, double longest) : m_shape(shape), m_longest(longest) {
        for (const PlateOpening& opening : shape.openings) {
            m_openings.emplace_back();
            for (const OutlineLoop& loop : opening) {
                if (loop.size() > 1) m_openings.back().push_back(flattened(loop));
            }
        }
        for (const PlateBand& band : shape.bands) m_bandBounds.push_back(boundsOf(band.corners));
    }

    PlateMesh mesh() {
        addSides();
        if (isCutUpSoundly() && refine()) read();
        return std::move(m_mesh);
    }

  private:
    static Kernel::Point_2 put(Point at) { return {at.x, at.y}; }
    static Point from(const Kernel::Point_2& at) { return {at.x(), at.y()}; }
    static Point middleOf(Face face) {
        return (1.0 / 3) * (from(face->vertex(0)->point()) + from(face->vertex(1)->point()) + from(face->vertex(2)->point()));
    }

    void addRing(const Polygon& polygon) {
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Point a = polygon[i];
            const Point b = polygon[(i + 1) % polygon.size()];
            if (distance(a, b) > kGrid / 2) m_triangulation.insert_constraint(put(a), put(b));
        }
    }

    void addSides() {
        const double w = m_shape.width;
        const double h = m_shape.height;
        addRing({{0, 0}, {w, 0}, {w, h}, {0, h}});
        for (const std::vector<Polygon>& opening : m_openings) {
            for (const Polygon& polygon : opening) addRing(polygon);
        }
        for (const PlateHold& hold : m_shape.holds) {
            if (hold.corners.size() > 2) addRing(hold.corners);
        }
    }

    [[nodiscard]] bool isOpen(Point place) const {
        return std::ranges::any_of(m_openings, [&](const std::vector<Polygon>& opening) { return isIn(opening, place); });
    }

    /// Whether no triangle is so flat that refining would never end.
    [[nodiscard]] bool isCutUpSoundly() const {
        return std::ranges::all_of(m_triangulation.finite_face_handles(), [](Face face) {
            const std::array<Point, 3> at{from(face->vertex(0)->point()), from(face->vertex(1)->point()), from(face->vertex(2)->point())};
            const double longest = std::max({distance(at[0], at[1]), distance(at[1], at[2]), distance(at[2], at[0])});
            return cross(at[1] - at[0], at[2] - at[0]) > kLeastHeight * longest;
        });
    }

    /// False where it would take too many triangles.
    bool refine() {
        std::list<Kernel::Point_2> seeds;
        for (const Face face : m_triangulation.finite_face_handles()) {
            if (isOpen(middleOf(face))) seeds.push_back(put(middleOf(face)));
        }
        Mesher mesher(m_triangulation, Criteria(kLeastAngle, m_longest));
        mesher.set_seeds(seeds.begin(), seeds.end(), false);
        mesher.init();
        while (m_triangulation.number_of_vertices() < kMostPoints) {
            if (!mesher.try_one_step_refine_mesh()) return true;
        }
        return false;
    }

    std::size_t corner(Triangulation::Vertex_handle vertex) { return nodeAt(m_corners, vertex, from(vertex->point())); }
    std::size_t middle(std::size_t a, std::size_t b) {
        return nodeAt(m_middles, std::minmax({a, b}), 0.5 * (m_mesh.nodes[a] + m_mesh.nodes[b]));
    }
    template <typename Key>
    std::size_t nodeAt(std::map<Key, std::size_t>& known, const Key& key, Point place) {
        const auto [at, isNew] = known.try_emplace(key, m_mesh.nodes.size());
        if (isNew) {
            m_mesh.nodes.push_back(place);
            m_mesh.isHeld.push_back(isHeld(place));
        }
        return at->second;
    }

    [[nodiscard]] bool isHeld(Point place) const {
        return std::ranges::any_of(m_shape.holds, [&](const PlateHold& hold) {
            return hold.corners.size() > 2 ? isInConvex(hold.corners, place) : isOn(hold.corners.front(), hold.corners.back(), place);
        });
    }
    [[nodiscard]] double thicknessAt(Point place, const std::vector<std::size_t>& bands) const {
        double thickness = m_shape.thickness;
        for (const std::size_t band : bands) {
            if (isInConvex(m_shape.bands[band].corners, place)) thickness = std::min(thickness, m_shape.bands[band].thickness);
        }
        return thickness;
    }
    /// The mean round each corner, from places spread evenly over the triangle.
    [[nodiscard]] std::array<double, 3> thicknessOf(const std::array<Point, 3>& at) const {
        const Box box = boundsOf({at[0], at[1], at[2]});
        std::vector<std::size_t> bands;
        for (std::size_t i = 0; i < m_bandBounds.size(); ++i) {
            const Box& is = m_bandBounds[i];
            if (is.low.x < box.high.x && is.high.x > box.low.x && is.low.y < box.high.y && is.high.y > box.low.y) bands.push_back(i);
        }
        if (bands.empty()) return {m_shape.thickness, m_shape.thickness, m_shape.thickness};
        std::array<double, 3> sum{};
        std::array<int, 3> count{};
        for (int i = 0; i < kThicknessSteps; ++i) {
            for (int j = 0; i + j < kThicknessSteps; ++j) {
                const double a = (i + 1.0 / 3) / kThicknessSteps;
                const double b = (j + 1.0 / 3) / kThicknessSteps;
                const double c = 1 - a - b;
                const std::size_t nearest = a >= b && a >= c ? 0 : b >= c ? 1 : 2;
                sum[nearest] += thicknessAt(a * at[0] + b * at[1] + c * at[2], bands);
                ++count[nearest];
            }
        }
        return {sum[0] / count[0], sum[1] / count[1], sum[2] / count[2]};
    }

    /// Triangles that hang together with a held one by their sides.
    [[nodiscard]] std::vector<Face> heldFaces() const {
        std::map<Face, bool> reached;
        std::vector<Face> waiting;
        for (const Face face : m_triangulation.finite_face_handles()) {
            if (!face->is_in_domain()) continue;
            int held = 0;
            for (int i = 0; i < 3; ++i) held += isHeld(from(face->vertex(i)->point())) ? 1 : 0;
            if (held < 2) continue;
            reached[face] = true;
            waiting.push_back(face);
        }
        std::vector<Face> faces;
        while (!waiting.empty()) {
            const Face face = waiting.back();
            waiting.pop_back();
            faces.push_back(face);
            for (int i = 0; i < 3; ++i) {
                const Face next = face->neighbor(i);
                if (m_triangulation.is_infinite(next) || !next->is_in_domain() || reached[next]) continue;
                reached[next] = true;
                waiting.push_back(next);
            }
        }
        return faces;
    }

    void read() {
        for (const Face face : heldFaces()) {
            std::array<std::size_t, 6> six{};
            for (int i = 0; i < 3; ++i) six[static_cast<std::size_t>(i)] = corner(face->vertex(i));
            for (std::size_t i = 0; i < 3; ++i) six[3 + i] = middle(six[i], six[(i + 1) % 3]);
            m_mesh.triangles.push_back(six);
            m_mesh.thickness.push_back(thicknessOf({m_mesh.nodes[six[0]], m_mesh.nodes[six[1]], m_mesh.nodes[six[2]]}));
            for (int i = 0; i < 3; ++i) {
                const Face beyond = face->neighbor(i);
                if (!m_triangulation.is_infinite(beyond) && beyond->is_in_domain()) continue;
                const auto a = static_cast<std::size_t>((i + 1) % 3);
                m_mesh.rims.push_back({six[a], six[3 + a], six[(a + 1) % 3]});
            }
        }
    }

    const PlateShape& m_shape;
    double m_longest;
    std::vector<std::vector<Polygon>> m_openings;
    std::vector<Box> m_bandBounds;
    Triangulation m_triangulation;
    PlateMesh m_mesh;
    std::map<Triangulation::Vertex_handle, std::size_t> m_corners;
    std::map<std::pair<std::size_t, std::size_t>, std::size_t> m_middles;
};

}  // namespace

PlateMesh meshOf(const PlateShape& shape, double longest) {
    try {
        return PlateMesher(shape, longest).mesh();
    } catch (const CGAL::Failure_exception&) {
        return {};
    }
}

}  // namespace kerfwall
