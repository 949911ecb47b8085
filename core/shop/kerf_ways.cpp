// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/kerf_ways.h"

#include <algorithm>
#include <array>

#include "core/shop/heading.h"

namespace kerfwall {

namespace {

using KindsByLiking = std::array<SawKind, 5>;

KindsByLiking likedKinds(const Project& project, const CutAsked& cut) {
    using enum SawKind;
    switch (headingFrom(project.panel.referenceEdge, cut.from, cut.to)) {
        case Heading::Along:
            return {RipFence, CrosscutSled, MitreGauge, GuideRail, SlidingMitre};
        case Heading::Square:
            return {CrosscutSled, MitreGauge, RipFence, SlidingMitre, GuideRail};
        case Heading::Askew:
            break;
    }
    return {MitreGauge, GuideRail, SlidingMitre, CrosscutSled, RipFence};
}

std::optional<std::size_t> sawNamed(const Project& project, const CutAsked& cut) {
    const auto& named = project.lines.at(cut.line).saw;
    if (!named) {
        return std::nullopt;
    }
    const std::vector<Saw>& saws = benchOf(project).saws;
    const auto found = std::ranges::find(saws, *named, &Saw::id);
    return found == saws.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - saws.begin()));
}

void addWaysAt(std::vector<KerfWay>& all, const Project& project, const CutAsked& cut, std::size_t saw) {
    if (!cut.atSaw.at(saw)) {
        return;
    }
    const KindsByLiking kinds = likedKinds(project, cut);
    const SawKind kind = benchOf(project).saws[saw].kind;
    const int rank = static_cast<int>(std::ranges::find(kinds, kind) - kinds.begin());
    const std::vector<Way> ways = waysAt(project, saw, askedOf(cut.from, cut.to, *cut.atSaw[saw]));
    for (std::size_t i = 0; i < ways.size(); ++i) {
        const int dislike = 100 * rank + static_cast<int>(i);
        all.push_back({saw, i, ways[i], setupKey(ways[i], project.lines[cut.line].id), dislike});
    }
}

/// Keeps the ways that `is` says yes to, if there are any.
void preferWhere(std::vector<KerfWay>& ways, bool (*is)(const Project&, const Way&), const Project& project) {
    if (std::ranges::any_of(ways, [&](const KerfWay& way) { return is(project, way.is); })) {
        std::erase_if(ways, [&](const KerfWay& way) { return !is(project, way.is); });
    }
}

bool keepsToReference(const Project& project, const Way& way) {
    return !way.against || *way.against == project.panel.referenceEdge;
}

bool isSeen(const Project&, const Way& way) { return way.faceUp; }

KerfWay noWay(const Project& project, const CutAsked& cut) {
    KerfWay none;
    none.saw = sawNamed(project, cut);
    none.is = markedWay(none.saw);
    none.setup = setupKey(none.is, project.lines[cut.line].id);
    return none;
}

}  // namespace

std::vector<KerfWay> kerfWays(const Project& project, const CutAsked& cut) {
    const auto named = sawNamed(project, cut);
    std::vector<KerfWay> ways;
    for (std::size_t saw = 0; saw < cut.atSaw.size(); ++saw) {
        if (!named || *named == saw) {
            addWaysAt(ways, project, cut, saw);
        }
    }
    if (ways.empty()) {
        return {noWay(project, cut)};
    }
    if (project.plan.prefer != Prefer::FewestSetups) {
        preferWhere(ways, keepsToReference, project);
    }
    if (project.plan.prefer == Prefer::SeenLines &&
        headingFrom(project.panel.referenceEdge, cut.from, cut.to) == Heading::Askew) {
        preferWhere(ways, isSeen, project);
    }
    return ways;
}

}  // namespace kerfwall
