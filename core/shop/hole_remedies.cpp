// SPDX-License-Identifier: GPL-3.0-or-later
// Remedies for a clamp hole; declared in remedy_ways.h. Geometry's answer does not hang on the holes, so the nearest good
// place is looked for with the findings about holes alone.
#include <algorithm>
#include <cmath>
#include <functional>

#include "core/geometry/edge_place.h"
#include "core/says/length_text.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/panel_edges.h"
#include "core/shop/remedy_ways.h"

namespace kerfwall {
namespace {

constexpr int kMostSteps = 200;       // looked at each way along the edge
constexpr double kLeastShare = 0.5;   // of its depth: a hole drilled shallower holds no clamp
constexpr double kThinnestDrill = 3;  // mm; a thinner drill wanders

class Hole {
  public:
    explicit Hole(const Minded& minded)
        : m_minded(minded), m_index(*minded.finding.hole), m_troubles(troubles(minded.project)) {}

    const ClampHole& now() const { return m_minded.project.clampHoles[m_index]; }
    const Project& project() const { return m_minded.project; }
    /// A whole step of a rule: a millimetre or 1/16 in.
    double step() const { return project().units == Units::Inches ? kMillimetresPerInch / 16 : 1; }

    /// The hole as changed, where it is rid of what is minded and nothing else about any hole came up.
    std::optional<Project> changed(const ClampHole& hole) const {
        Project next = project();
        next.clampHoles[m_index] = hole;
        const std::vector<Finding> left = troubles(next);
        const bool isGone = std::ranges::none_of(left, [&](const Finding& each) {
            return each.hole == m_index && each.code == m_minded.finding.code;
        });
        return isGone && left.size() < m_troubles.size() ? std::optional(std::move(next)) : std::nullopt;
    }

  private:
    std::vector<Finding> troubles(const Project& of) const {
        std::vector<Finding> all = holeFindings(of, m_minded.solved);
        if (m_minded.finding.code != "runout") return all;
        for (Finding& each : runoutFindings(of, m_minded.solved)) all.push_back(std::move(each));
        return all;
    }

    const Minded& m_minded;
    std::size_t m_index;
    std::vector<Finding> m_troubles;
};

Way one(std::optional<Project> project, const std::string& words) {
    if (!project) return {};
    Change change{words, std::move(*project)};
    change.keepsAnswer = true;
    return {std::move(change)};
}

std::string nameOf(const Minded& minded) {
    const ClampHole& hole = minded.project.clampHoles[*minded.finding.hole];
    return "clamp hole " + (hole.id.empty() ? std::to_string(*minded.finding.hole + 1) : hole.id);
}

Way along(const Minded& minded, const Hole& hole) {
    const double end = edgeLength(minded.project.panel, hole.now().edge);
    for (int i = 1; i <= kMostSteps; ++i) {
        for (const double way : {1.0, -1.0}) {
            ClampHole moved = hole.now();
            moved.at += way * i * hole.step();
            if (moved.at < 0 || moved.at > end) continue;
            auto next = hole.changed(moved);
            if (next) {
                return one(std::move(next), "Move " + nameOf(minded) + " by " +
                                                lengthWords(minded.project, i * hole.step()) + " along its edge, to " +
                                                lengthWords(minded.project, moved.at));
            }
        }
    }
    return {};
}

Way shallower(const Minded& minded, const Hole& hole) {
    const double least = kLeastShare * hole.now().depth;
    for (double depth = std::floor(hole.now().depth / hole.step()) * hole.step(); depth >= least; depth -= hole.step()) {
        ClampHole drilled = hole.now();
        drilled.depth = depth;
        if (depth == hole.now().depth) continue;
        auto next = hole.changed(drilled);
        if (next) return one(std::move(next), "Drill " + nameOf(minded) + " " + lengthWords(minded.project, depth) + " deep");
    }
    return {};
}

Way otherHeight(const Minded& minded, const Hole& hole) {
    const Project& project = minded.project;
    const double now = heightOf(project.panel, hole.now());
    const double fine = hole.step() / 2;
    for (int i = 0; i * fine < project.panel.thickness; ++i) {
        for (const double way : {1.0, -1.0}) {
            ClampHole drilled = hole.now();
            // First on the middle of the panel, then away from where it is.
            drilled.height = i == 0 ? project.panel.thickness / 2 : std::round((now + way * i * fine) / fine) * fine;
            if (*drilled.height <= 0 || *drilled.height >= project.panel.thickness) continue;
            auto next = hole.changed(drilled);
            if (next) {
                return one(std::move(next), "Drill " + nameOf(minded) + " with its axis " +
                                                lengthWords(project, *drilled.height) + " below the layout face");
            }
        }
    }
    return {};
}

Way thinner(const Minded& minded, const Hole& hole) {
    std::vector<double> drills;
    for (const Clamp& clamp : benchOf(minded.project).clamps) drills.push_back(clamp.hole);
    if (drills.empty()) {
        const double step = minded.project.units == Units::Inches ? hole.step() : hole.step() / 2;
        for (double size = std::ceil(hole.now().diameter / step - 1) * step; size >= kThinnestDrill; size -= step) {
            drills.push_back(size);
        }
    }
    std::erase_if(drills, [&](double size) { return size >= hole.now().diameter; });
    std::ranges::sort(drills, std::greater{});
    for (const double size : drills) {
        ClampHole drilled = hole.now();
        drilled.diameter = size;
        auto next = hole.changed(drilled);
        if (next) return one(std::move(next), "Drill " + nameOf(minded) + " " + lengthWords(minded.project, size) + " across");
    }
    return {};
}

}  // namespace

std::vector<Way> holeWays(const Minded& minded) {
    if (!minded.finding.hole) return {};
    const Hole hole(minded);
    return {shallower(minded, hole), otherHeight(minded, hole), along(minded, hole), thinner(minded, hole)};
}

}  // namespace kerfwall
