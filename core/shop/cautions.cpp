// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/cautions.h"

#include <algorithm>

#include "core/says/length_text.h"

namespace kerfwall {

namespace {

// Common practice, no source: in mm and in whole inches.
constexpr double kPushStick = 450, kPushStickInches = 18 * 25.4;      ///< least length
constexpr double kPushStickLast = 300, kPushStickLastInches = 12 * 25.4;  ///< of a cut

using Sentences = std::vector<std::string>;

constexpr const char* kManual = "The machine's manual, your local rules and your training come first.";
constexpr const char* kBody =
    "Protect eyes, ears and lungs, and draw the dust off; the limits for MDF and wood dust differ by "
    "country, 3 to 5 mg/m³ in the UK, 1 to 15 in the USA.";

bool isTableSaw(SawKind kind) {
    return kind == SawKind::RipFence || kind == SawKind::CrosscutSled || kind == SawKind::MitreGauge;
}

/// The saws at hand that work from the layout face.
std::string seenSaws(const Project& project) {
    const auto& saws = benchOf(project).saws;
    const auto has = [&](SawKind kind) { return std::ranges::find(saws, kind, &Saw::kind) != saws.end(); };
    const bool mitre = has(SawKind::SlidingMitre);
    if (!has(SawKind::GuideRail)) {
        return mitre ? "the sliding mitre saw" : "a hand-held saw on a rail";
    }
    return mitre ? "the saw on its rail or the sliding mitre saw" : "the saw on its rail";
}

Sentences tableSawCautions(const Project& project, SawKind kind) {
    Sentences said{
        "Saw part-depth on the bench only where your rules allow it; where they do not, use " + seenSaws(project) + ".",
        "Unplug the saw to set it.",
        "Use the saw guard as the machine allows, and put the riving knife back after part-depth work.",
        "Keep both hands clear of the face above the hidden blade.",
        "Never cut freehand.",
    };
    if (kind == SawKind::RipFence) {
        const bool inches = project.units == Units::Inches;
        said.push_back("Push the last " + lengthWithUnit(inches ? kPushStickLastInches : kPushStickLast, project.units, 0) +
                       " of the cut with a push stick at least " +
                       lengthWithUnit(inches ? kPushStickInches : kPushStick, project.units, 0) + " long.");
        said.push_back("The fence must not crowd the blade.");
    }
    return said;
}

}  // namespace

Sentences sawCautions(const Project& project, SawKind kind, bool plunges) {
    Sentences said = isTableSaw(kind)
                         ? tableSawCautions(project, kind)
                         : Sentences{"Clamp the panel.", "Unplug the saw to set it.", "Never cut freehand."};
    if (kind == SawKind::GuideRail) {
        said.front() = "Clamp the panel and the rail.";
        if (plunges) {
            said.insert(said.begin() + 1,
                        "A blade let down into the panel can throw the saw back: set a stop behind the saw, its base flat on "
                        "the rail, let it down while moving forwards and never draw it back.");
        }
    }
    said.push_back("Wait for the blade to stop before you lift the panel or the saw.");
    said.push_back(kBody);
    said.push_back(kManual);
    return said;
}

std::optional<int> stepWithSameCautions(const OrderOfWork& order, const WorkStep& step) {
    if (step.cautions.empty()) return std::nullopt;
    const auto first = std::ranges::find(order.steps, step.cautions, &WorkStep::cautions);
    const bool isEarlier = first != order.steps.end() && first->number < step.number;
    return isEarlier ? std::optional(first->number) : std::nullopt;
}

Sentences routerCautions() {
    return {"Unplug the router to set it.",
            "Clamp the work to the bench, or hold it with a push block on the table.",
            "Feed against the cutter's turn.",
            "The speed marked on the cutter wins.",
            kBody,
            kManual};
}

Sentences taskCautions(Task task) {
    switch (task) {
        case Task::Bore:
        case Task::Drill:
        case Task::Hole:
            return {"Clamp the work.", "Unplug the drill to change its bit.", kBody, kManual};
        case Task::Rough:
            return {"Clamp the work.", "Unplug the saw to change its blade.", kBody, kManual};
        case Task::Trim:
            return routerCautions();
        case Task::Kerf:
            return {"Clamp the panel.", "Never cut freehand.", "Wait for the blade to stop.", kBody, kManual};
        case Task::Fence:
            return {"Clamp the work.", kManual};
        case Task::Hand:
        case Task::Mark:
        case Task::Label:
            break;
    }
    return {};
}

}  // namespace kerfwall
