// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/saw_limit.h"

#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/shop/finding_words.h"
#include "core/shop/heading.h"
#include "core/shop/step_text.h"

namespace kerfwall {
namespace {

std::optional<BeyondSaw> above(SawLimit limit, double asked, double most) {
    return asked > most ? std::optional(BeyondSaw{limit, asked, most}) : std::nullopt;
}

}  // namespace

std::optional<BeyondSaw> limitBeyond(const Saw& saw, const AskedCut& cut, Edge against, const Panel& panel) {
    if (cut.stopped && !canStop(saw.kind)) return BeyondSaw{SawLimit::CannotStop, {}, {}};
    if (2 * cut.depth >= saw.blade) return BeyondSaw{SawLimit::Blade, 2 * cut.depth, saw.blade};
    const bool along = headingFrom(against, cut.from, cut.to) == Heading::Along;
    if (saw.kind != SawKind::GuideRail && along != (saw.kind == SawKind::RipFence)) {
        return BeyondSaw{SawLimit::Direction, {}, {}};
    }
    const double lean = std::abs(leanFrom(against, cut.from, cut.to));
    const double run = distance(cut.from, cut.to);
    std::optional<BeyondSaw> angle;
    switch (saw.kind) {
        case SawKind::RipFence:
            return above(SawLimit::Fence, distanceFromEdge(panel, against, cut.from), saw.maxFence);
        case SawKind::CrosscutSled:
            angle = above(SawLimit::Angle, lean, kSteepestWedge);
            return angle ? angle : above(SawLimit::Cut, run, saw.maxCut);
        case SawKind::MitreGauge:
            return above(SawLimit::Angle, lean, saw.maxAngle);
        case SawKind::GuideRail:
            return above(SawLimit::Rail, run, saw.railLength);
        case SawKind::SlidingMitre:
            angle = above(SawLimit::Angle, lean, saw.maxAngle);
            return angle ? angle : above(SawLimit::Cut, run + spacerFor(saw, cut.depth), saw.maxCut);
    }
    return std::nullopt;
}

std::optional<BeyondSaw> limitBeyond(const Saw& saw, const AskedCut& cut, const Panel& panel) {
    std::optional<BeyondSaw> best;
    for (const Edge against : trueEdges(panel)) {
        const auto beyond = limitBeyond(saw, cut, against, panel);
        if (!beyond) return std::nullopt;
        if (!best || (best->limit == SawLimit::Direction && beyond->limit != SawLimit::Direction)) best = beyond;
    }
    return best;
}

std::string limitWords(const Project& project, const Saw& saw, const BeyondSaw& beyond) {
    const auto length = [&](std::optional<double> mm) { return lengthWords(project, mm.value_or(0)); };
    switch (beyond.limit) {
        case SawLimit::CannotStop:
            return "it cannot stop a kerf short of the panel's edge";
        case SawLimit::Blade:
            return "its blade of " + length(beyond.most) + " must be wider than " + length(beyond.asked) +
                   ", twice the kerf's depth";
        case SawLimit::Direction:
            return saw.kind == SawKind::RipFence ? "no edge that is said to be true runs along the line for its fence"
                                                 : "the line runs along its fence";
        case SawLimit::Fence:
            return "its fence opens to " + length(beyond.most) + ", and the line lies " + length(beyond.asked) +
                   " from the edge on it";
        case SawLimit::Cut:
            return "it cuts " + length(beyond.most) + " at most, and this cut takes " + length(beyond.asked);
        case SawLimit::Angle:
            return (saw.kind == SawKind::CrosscutSled ? "a wedge on it turns the panel up to " : "it turns up to ") +
                   degreesText(beyond.most.value_or(0)) + ", and the line leans " + degreesText(beyond.asked.value_or(0));
        case SawLimit::Rail:
            return "its rail lets it cut " + length(beyond.most) + ", and the line runs " + length(beyond.asked);
    }
    return "";
}

}  // namespace kerfwall
