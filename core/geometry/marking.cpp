// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/marking.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/geometry/clip.h"
#include "core/geometry/face_seeds.h"
#include "core/geometry/solve.h"
#include "core/geometry/waste_click.h"

namespace kerfwall {
namespace {

using Polygon = std::vector<Point>;

constexpr double kSmallestFace = 1e-6;  // mm²; less is a line that lies on another
constexpr double kSharedBorder = 1e-3;  // mm; from here on a line bounds a cutout

/// Length of the border two convex faces share.
double sharedBorder(const Polygon& first, const Polygon& second) {
    double longest = 0;
    for (std::size_t i = 0; i < first.size(); ++i) {
        const Point from = first[i], run = first[(i + 1) % first.size()] - from;
        if (length(run) < kSharedBorder) continue;
        const Point along = unit(run);
        for (std::size_t j = 0; j < second.size(); ++j) {
            const Point a = second[j] - from, b = second[(j + 1) % second.size()] - from;
            if (std::abs(cross(along, a)) > kSmallestFace || std::abs(cross(along, b)) > kSmallestFace) continue;
            const double low = std::max(0.0, std::min(dot(along, a), dot(along, b)));
            const double high = std::min(length(run), std::max(dot(along, a), dot(along, b)));
            longest = std::max(longest, high - low);
        }
    }
    return longest;
}

bool borders(const Project& project, const Cutout& cutout, const Polygon& face) {
    return std::ranges::any_of(cutout.seeds, [&](Point seed) {
        return sharedBorder(face, facePolygon(project, seed)) >= kSharedBorder;
    });
}

/// Takes the face's seed out of the cutout that holds it; that cutout's id, "" where none does.
std::string unmark(Project& project, const std::string& face) {
    for (std::size_t i = 0; i < project.cutouts.size(); ++i) {
        Cutout& cutout = project.cutouts[i];
        const auto inFace = [&](Point seed) { return faceAt(project, seed) == face; };
        if (std::erase_if(cutout.seeds, inFace) == 0) continue;
        const std::string id = cutout.id;
        if (cutout.seeds.empty()) project.cutouts.erase(project.cutouts.begin() + static_cast<std::ptrdiff_t>(i));
        return id;
    }
    return {};
}

/// A cut line before and after a change: both runs, pointing the same way.
struct Change {
    Point oldFrom, oldTo;
    Point newFrom, newTo;
};

/// The faces that one face has become.
class Carried {
public:
    Carried(const std::vector<SolvedLine>& before, const std::vector<SolvedLine>& after, const Panel& panel);
    std::vector<Polygon> facesOf(Point seed) const;

private:
    std::vector<Change> m_kept;
    std::vector<std::pair<Point, Point>> m_fresh;
    Polygon m_panel;
};

Carried::Carried(const std::vector<SolvedLine>& before, const std::vector<SolvedLine>& after, const Panel& panel)
    : m_panel{{0, 0}, {panel.width, 0}, {panel.width, panel.height}, {0, panel.height}} {
    for (const SolvedLine& now : after) {
        if (!now.cut) continue;
        const auto old = std::ranges::find_if(before, [&](const auto& line) { return line.cut && line.id == now.id; });
        if (old == before.end()) {
            m_fresh.emplace_back(now.from, now.to);
            continue;
        }
        const bool turned = dot(now.to - now.from, old->to - old->from) < 0;
        m_kept.push_back({old->from, old->to, turned ? now.to : now.from, turned ? now.from : now.to});
    }
}

std::vector<Polygon> Carried::facesOf(Point seed) const {
    Polygon face = m_panel;
    for (const Change& line : m_kept) {
        const bool left = cross(line.oldTo - line.oldFrom, seed - line.oldFrom) > 0;
        if (face.empty()) return {};
        face = left ? leftPart(face, line.newFrom, line.newTo) : leftPart(face, line.newTo, line.newFrom);
    }
    std::vector<Polygon> faces{face};
    for (const auto& [from, to] : m_fresh) {
        std::vector<Polygon> parts;
        for (const Polygon& whole : faces) {
            for (const Polygon& part : {leftPart(whole, from, to), leftPart(whole, to, from)}) {
                if (part.size() > 2 && polygonArea(part) > kSmallestFace) parts.push_back(part);
            }
        }
        faces = std::move(parts);
    }
    std::erase_if(faces, [](const Polygon& part) { return part.size() < 3 || polygonArea(part) <= kSmallestFace; });
    return faces;
}

/// A face of the new layout and the cutout that claimed it first.
struct Claim {
    Polygon face;
    std::size_t cutout;
};

/// Puts the seeds of one cutout into their new faces. Where another cutout has claimed a face before, both
/// become one: `heir` of the later is the earlier.
void carrySeeds(const Carried& carried, std::size_t index, Cutout& cutout, std::vector<Claim>& claims,
                std::vector<std::size_t>& heir) {
    const std::vector<Point> seeds = std::move(cutout.seeds);
    cutout.seeds.clear();
    for (const Point seed : seeds) {
        for (const Polygon& face : carried.facesOf(seed)) {
            const Point centre = seedOf(face);
            const auto claim = std::ranges::find_if(claims, [&](const Claim& c) { return isInFace(c.face, centre); });
            if (claim != claims.end()) {
                if (heir[index] == index) heir[index] = heir[claim->cutout];
                continue;
            }
            claims.push_back({face, index});
            // A seed still inside its face stays where it is: an unmoved cutout is saved unchanged.
            cutout.seeds.push_back(isInFace(face, seed) ? seed : centre);
        }
    }
}

void joinToHeirs(std::vector<Cutout>& cutouts, const std::vector<std::size_t>& heir) {
    for (std::size_t i = 0; i < cutouts.size(); ++i) {
        if (heir[i] == i) continue;
        Cutout& kept = cutouts[heir[i]];
        Cutout& gone = cutouts[i];
        kept.seeds.insert(kept.seeds.end(), gone.seeds.begin(), gone.seeds.end());
        kept.corners.insert(kept.corners.end(), gone.corners.begin(), gone.corners.end());
        if (!kept.wanted) kept.wanted = gone.wanted;
        gone.seeds.clear();
    }
}

/// True for a cutout that the change itself marked, or marked elsewhere: its seeds stand as they are.
bool isMarkedAnew(const Project& before, const Cutout& cutout) {
    const auto old = std::ranges::find(before.cutouts, cutout.id, &Cutout::id);
    return old == before.cutouts.end() || old->seeds != cutout.seeds;
}

bool isSameLayout(const Project& before, const Project& after) {
    return before.lines == after.lines && before.panel == after.panel;
}

std::vector<SolvedLine> linesOf(Project project) {
    project.cutouts.clear();
    return solve(project).lines;
}

}  // namespace

std::string freshCutoutId(const Project& project) {
    int number = 1;
    const auto taken = [&] {
        const std::string id = "cutout-" + std::to_string(number);
        return std::ranges::any_of(project.cutouts, [&](const Cutout& cutout) { return cutout.id == id; });
    };
    while (taken()) ++number;
    return "cutout-" + std::to_string(number);
}

std::expected<Marking, NoMarking> markWaste(const Project& project, Point place, const std::string& joinTo) {
    const bool inside = place.x > 0 && place.x < project.panel.width && place.y > 0 && place.y < project.panel.height;
    if (!inside) return std::unexpected(NoMarking::NotOnPanel);
    const auto face = faceAt(project, place);
    if (!face) return std::unexpected(NoMarking::OnALine);
    Marking marking{project, {}, Marked::Taken};
    marking.cutout = unmark(marking.project, *face);
    if (!marking.cutout.empty()) return marking;
    const Polygon polygon = facePolygon(project, place);
    const Point seed = polygon.size() < 3 ? place : seedOf(polygon);
    const auto joins = [&](const Cutout& cutout) {
        return joinTo.empty() ? borders(project, cutout, polygon) : cutout.id == joinTo;
    };
    const auto found = std::ranges::find_if(marking.project.cutouts, joins);
    if (found == marking.project.cutouts.end()) {
        marking.cutout = freshCutoutId(project);
        marking.what = Marked::Added;
        marking.project.cutouts.push_back({marking.cutout, {seed}, {}, {}, {}});
    } else {
        marking.cutout = found->id;
        marking.what = Marked::Joined;
        found->seeds.push_back(seed);
    }
    return marking;
}

Project carryCutouts(const Project& before, const Solved& solvedBefore, Project after) {
    if (after.cutouts.empty() || isSameLayout(before, after)) return after;
    const std::vector<SolvedLine> lines = linesOf(after);
    const Carried carried(solvedBefore.lines, lines, after.panel);
    std::vector<Claim> claims;
    std::vector<std::size_t> heir(after.cutouts.size());
    std::iota(heir.begin(), heir.end(), std::size_t{0});
    for (std::size_t i = 0; i < after.cutouts.size(); ++i) {
        if (!isMarkedAnew(before, after.cutouts[i])) continue;
        for (const Point seed : after.cutouts[i].seeds) claims.push_back({faceRound(after.panel, lines, seed), i});
    }
    for (std::size_t i = 0; i < after.cutouts.size(); ++i) {
        if (isMarkedAnew(before, after.cutouts[i])) continue;
        carrySeeds(carried, i, after.cutouts[i], claims, heir);
    }
    joinToHeirs(after.cutouts, heir);
    std::erase_if(after.cutouts, [](const Cutout& cutout) { return cutout.seeds.empty(); });
    return after;
}

std::vector<std::string> vanishedCutouts(const Project& before, const Solved& solvedBefore, const Project& after) {
    std::vector<std::string> gone;
    if (before.cutouts.empty() || isSameLayout(before, after)) return gone;
    const Carried carried(solvedBefore.lines, linesOf(after), after.panel);
    for (const Cutout& cutout : before.cutouts) {
        const auto now = std::ranges::find(after.cutouts, cutout.id, &Cutout::id);
        if (now != after.cutouts.end() && now->seeds != cutout.seeds) continue;  // marked elsewhere
        const auto isGone = [&](Point seed) { return carried.facesOf(seed).empty(); };
        if (std::ranges::all_of(cutout.seeds, isGone)) gone.push_back(cutout.id);
    }
    return gone;
}

}  // namespace kerfwall
