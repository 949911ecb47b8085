// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/strength/flex.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "core/geometry/clip.h"
#include "core/geometry/edge_place.h"
#include "core/geometry/kerf_band.h"
#include "core/says/bench.h"
#include "core/strength/held_plate.h"
#include "core/strength/material.h"
#include "core/strength/plate_mesh.h"

namespace kerfwall {
namespace {

constexpr double kFinest = 12;             // mm, a triangle's side on a plain panel
constexpr double kTrianglesOfAll = 6000;   // on a large one
constexpr double kSidesOfArea = 2.3;       // triangles of side a on an area of a²
constexpr double kSameDiameter = 0.05;     // mm
constexpr double kOnWall = 2e-3;           // mm
constexpr double kSampleStep = 15;         // mm along a wall
constexpr int kMostSamples = 33;
constexpr int kRefinements = 6;

/// Where a kerf has its whole depth, anticlockwise.
std::vector<Point> bandOf(const Panel& panel, const SolvedLine& line, const Kerf& kerf) {
    std::vector<Point> band = kerfBand(panel, line, kerf, kerf.fullFrom, kerf.fullTo);
    if (polygonArea(band) < 0) std::ranges::reverse(band);
    return band;
}

PlateHold edgeHold(const Panel& panel, Edge edge) {
    return {{markPlace(panel, {edge, 0}), markPlace(panel, {edge, edgeLength(panel, edge)})}};
}

/// A clamp's jaw on the panel: as wide as the bench's clamp of that hole says, else as the hole itself.
PlateHold jawHold(const Project& project, const ClampHole& hole) {
    double jaw = hole.diameter;
    for (const Clamp& clamp : benchOf(project).clamps) {
        if (clamp.jaw > 0 && std::abs(clamp.hole - hole.diameter) < kSameDiameter) jaw = clamp.jaw;
    }
    const Point along = edgeHeading(hole.edge);
    const Point at = markPlace(project.panel, {hole.edge, hole.at});
    const Point in = hole.depth * leftOf(along);
    const Point half = jaw / 2 * along;
    return {clippedToPanel({at - half, at + half, at + half + in, at - half + in}, project.panel)};
}

std::vector<PlateHold> clampHolds(const Project& project) {
    std::vector<PlateHold> holds;
    for (const ClampHole& hole : project.clampHoles) {
        PlateHold hold = jawHold(project, hole);
        if (hold.corners.size() > 2) holds.push_back(std::move(hold));  // else none of it lies on the panel
    }
    return holds;
}

/// None: the work holds it.
std::optional<std::vector<PlateHold>> holdsOf(const Project& project) {
    if (project.plan.held.empty()) {
        return project.clampHoles.empty() ? std::vector{edgeHold(project.panel, project.panel.referenceEdge)} : clampHolds(project);
    }
    std::vector<PlateHold> holds;
    for (const auto& held : project.plan.held) {
        if (const Edge* edge = std::get_if<Edge>(&held)) {
            holds.push_back(edgeHold(project.panel, *edge));
        } else if (std::get<HeldBy>(held) == HeldBy::Work) {
            return std::nullopt;
        } else {
            for (PlateHold& hold : clampHolds(project)) holds.push_back(std::move(hold));
        }
    }
    return holds;
}

PlateShape shapeOf(const Project& project, const Solved& solved, std::vector<PlateHold> holds) {
    PlateShape shape{project.panel.width, project.panel.height, project.panel.thickness, {}, {}, std::move(holds)};
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (!cutout.opening.loops.empty()) shape.openings.push_back(cutout.opening.loops);
    }
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            std::vector<Point> band = bandOf(project.panel, line, kerf);
            if (band.size() > 2) shape.bands.push_back({std::move(band), project.panel.thickness - kerf.depth});
        }
    }
    return shape;
}

/// A straight stretch of an opening that lies on a wall, and the mesh's sides on it.
class PushedStretch {
  public:
    PushedStretch(const OutlinePiece& piece, const PlateMesh& mesh) : m_from(piece.from), m_along(unit(piece.to - piece.from)), m_length(distance(piece.from, piece.to)) {
        for (const PlateRim& rim : mesh.rims) {
            const double from = placeOf(mesh.nodes[rim.from]);
            const double to = placeOf(mesh.nodes[rim.to]);
            if (isOn(mesh.nodes[rim.from]) && isOn(mesh.nodes[rim.to])) m_rims.push_back({rim, from, to});
        }
    }

    [[nodiscard]] bool isPushable() const { return !m_rims.empty() && m_length > kOnWall; }
    [[nodiscard]] double reach() const { return std::min(kPushedLength, m_length) / 2; }
    [[nodiscard]] double first() const { return reach(); }
    [[nodiscard]] double last() const { return m_length - reach(); }
    [[nodiscard]] Point at(double place) const { return m_from + place * m_along; }

    /// How far a push of 1 N spread round a place moves what it stands on, along itself, mm.
    [[nodiscard]] double gives(double place, const HeldPlate& plate) const {
        const Point push = -1.0 * leftOf(m_along);  // the opening lies on the left
        return plate.givesTo(spread(place, push));
    }

  private:
    struct Rim {
        PlateRim nodes;
        double from = 0;
        double to = 0;
    };
    [[nodiscard]] double placeOf(Point node) const { return dot(m_along, node - m_from); }
    [[nodiscard]] bool isOn(Point node) const {
        const double place = placeOf(node);
        return std::abs(cross(m_along, node - m_from)) < kOnWall && place > -kOnWall && place < m_length + kOnWall;
    }

    /// Each node's part of an even push, three places of Gauss on each side it covers.
    [[nodiscard]] std::vector<NodeForce> spread(double place, Point push) const {
        static const std::array<std::pair<double, double>, 3> kGauss{
            {{-std::sqrt(0.6), 5.0 / 9}, {0, 8.0 / 9}, {std::sqrt(0.6), 5.0 / 9}}};
        std::vector<NodeForce> forces;
        for (const Rim& rim : m_rims) {
            const double low = std::max(std::min(rim.from, rim.to), place - reach());
            const double high = std::min(std::max(rim.from, rim.to), place + reach());
            if (high <= low) continue;
            std::array<double, 3> part{};
            for (const auto& [node, weight] : kGauss) {
                const double share = ((low + high + node * (high - low)) / 2 - rim.from) / (rim.to - rim.from);
                const double amount = weight * (high - low) / 2 / (2 * reach());
                part[0] += amount * (1 - share) * (1 - 2 * share);
                part[1] += amount * 4 * share * (1 - share);
                part[2] += amount * share * (2 * share - 1);
            }
            forces.push_back({rim.nodes.from, part[0] * push});
            forces.push_back({rim.nodes.middle, part[1] * push});
            forces.push_back({rim.nodes.to, part[2] * push});
        }
        return forces;
    }

    Point m_from;
    Point m_along;
    double m_length;
    std::vector<Rim> m_rims;
};

/// Where a stretch gives most: looked for step by step, then between the best step's neighbours.
WallGive weakestOf(const PushedStretch& stretch, const HeldPlate& plate) {
    const double span = stretch.last() - stretch.first();
    const int count = std::clamp(static_cast<int>(std::ceil(span / kSampleStep)) + 1, 1, kMostSamples);
    const double step = count > 1 ? span / (count - 1) : 0;
    double best = stretch.first();
    double gives = stretch.gives(best, plate);
    for (int i = 1; i < count; ++i) {
        const double now = stretch.gives(stretch.first() + i * step, plate);
        if (now <= gives) continue;
        gives = now;
        best = stretch.first() + i * step;
    }
    double reach = step / 2;
    for (int i = 0; i < kRefinements && reach > 0.5; ++i, reach /= 2) {
        for (const double to : {best - reach, best + reach}) {
            if (to < stretch.first() || to > stretch.last()) continue;
            const double now = stretch.gives(to, plate);
            if (now <= gives) continue;
            gives = now;
            best = to;
            break;
        }
    }
    return {gives, stretch.at(best)};
}

bool liesOn(const OutlinePiece& piece, const Wall& wall) {
    if (piece.isArc || piece.on != wall.line) return false;
    const Point middle = 0.5 * (piece.from + piece.to);
    return dot(middle - wall.from, middle - wall.to) <= 0;
}

/// The weakest place of a wall, for a push of 1 N; none where no part of the wall is left to push or held at all.
std::optional<WallGive> weakestOf(const Wall& wall, const Outline& opening, const PlateMesh& mesh, const HeldPlate& plate) {
    std::optional<WallGive> weakest;
    for (const OutlineLoop& loop : opening.loops) {
        for (const OutlinePiece& piece : loop) {
            if (!liesOn(piece, wall)) continue;
            const PushedStretch stretch(piece, mesh);
            if (!stretch.isPushable()) continue;
            const WallGive found = weakestOf(stretch, plate);
            if (!weakest || found.gives > weakest->gives) weakest = found;
        }
    }
    return weakest;
}

}  // namespace

double sidePushOf(const Project& project) {
    const auto limits = project.limits.find("arm-flex");
    return limits == project.limits.end() ? kSidePush : limits->second.force.value_or(kSidePush);
}

Solved withFlex(const Project& project, Solved solved) {
    const auto holds = holdsOf(project);
    if (!holds || holds->empty()) return solved;
    const PlateShape shape = shapeOf(project, solved, *holds);
    if (shape.openings.empty()) return solved;
    const double area = shape.width * shape.height;
    const PlateMesh mesh = meshOf(shape, std::max(kFinest, std::sqrt(kSidesOfArea * area / kTrianglesOfAll)));
    if (mesh.triangles.empty()) return solved;
    const HeldPlate plate(mesh, elasticOf(project.panel.material, shape.thickness));
    if (!plate.isSound()) return solved;
    const double push = sidePushOf(project);
    for (SolvedCutout& cutout : solved.cutouts) {
        for (Wall& wall : cutout.walls) {
            const auto weakest = weakestOf(wall, cutout.opening, mesh, plate);
            if (weakest) wall.give = WallGive{push * weakest->gives, weakest->at};
        }
    }
    return solved;
}

}  // namespace kerfwall
