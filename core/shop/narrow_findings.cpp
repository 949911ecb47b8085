// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/geometry/distance.h"
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"
#include "core/shop/limits.h"
#include "core/shop/panel_edges.h"
#include "core/shop/word_list.h"

namespace kerfwall {
namespace {

Finding narrow(const SolvedCutout& cutout, Severity severity, Point at) {
    Finding finding;
    finding.code = "narrow";
    finding.severity = severity;
    finding.at = at;
    finding.cutout = cutout.id;
    return finding;
}

void measure(Finding& finding, double value, double limit) {
    finding.value = value;
    finding.limit = limit;
    finding.unit = "mm";
}

// The walls that stand nearest to one another across the cutout.
std::vector<LineId> nearestWalls(const SolvedCutout& cutout) {
    const auto least = std::ranges::min_element(cutout.sizes, {}, &FacingSize::distance);
    return least == cutout.sizes.end() ? std::vector<LineId>{}
                                       : std::vector<LineId>{least->first, least->second};
}

std::string moveRemedy(const Project& project, double width, double needed) {
    return "A bit of less than " + atMostWords(project, width) + " fits; or move a line by " +
           atLeastWords(project, needed - width) + " or more.";
}

Finding doesNotFit(const Project& project, const Solved& solved, const SolvedCutout& cutout) {
    const double bit = 2 * solved.bitRadius;
    Finding finding = narrow(cutout, Severity::Stop, cutout.widestAt);
    finding.lines = nearestWalls(cutout);
    if (cutout.widest < bit) {
        measure(finding, cutout.widest, bit);
        finding.text = "The trimming bit of " + lengthWords(project, bit) + " does not fit into cutout " +
                       cutout.id + ", which is " + lengthWords(project, cutout.widest) + " wide. " +
                       moveRemedy(project, cutout.widest, bit);
        return finding;
    }
    finding.text = "The trimming bit of " + lengthWords(project, bit) + " finds no place in cutout " +
                   cutout.id + ". Take a smaller bit, or move a line by 1 mm or more.";
    return finding;
}

// Where two outer loops come nearest: the neck lies there.
std::optional<Gap> betweenParts(const Outline& opening) {
    std::optional<Gap> best;
    for (std::size_t i = 0; i < opening.loops.size(); ++i) {
        for (std::size_t j = i + 1; j < opening.loops.size(); ++j) {
            Outline first, second;
            first.loops = {opening.loops[i]};
            second.loops = {opening.loops[j]};
            const auto gap = gapBetween(first, second);
            if (gap && (!best || gap->distance < best->distance)) {
                best = gap;
            }
        }
    }
    return best;
}

struct Neck {
    Gap gap;
    std::vector<LineId> lines;
};

bool shareCorner(const Wall& a, const Wall& b) {
    return (a.endCorner && a.endCorner == b.startCorner) || (a.startCorner && a.startCorner == b.endCorner);
}

// The two walls, too near for the bit, whose gap lies nearest to `place`.
std::optional<Neck> neckNear(const SolvedCutout& cutout, Point place, double bit) {
    std::optional<Neck> best;
    double nearest = 0;
    for (std::size_t i = 0; i < cutout.walls.size(); ++i) {
        for (std::size_t j = i + 1; j < cutout.walls.size(); ++j) {
            const Wall& a = cutout.walls[i];
            const Wall& b = cutout.walls[j];
            if (shareCorner(a, b)) {
                continue;
            }
            const Gap gap = gapBetween(straight(a.from, a.to), straight(b.from, b.to));
            const double off = distance(place, 0.5 * (gap.first + gap.second));
            if (gap.distance < bit && (!best || off < nearest)) {
                best = Neck{gap, {a.line, b.line}};
                nearest = off;
            }
        }
    }
    return best;
}

Finding cannotPass(const Project& project, const Solved& solved, const SolvedCutout& cutout) {
    const double bit = 2 * solved.bitRadius;
    const auto gap = betweenParts(cutout.opening);
    const Point place = gap ? 0.5 * (gap->first + gap->second) : cutout.widestAt;
    Finding finding = narrow(cutout, Severity::Stop, place);
    const std::string start =
        "The trimming bit of " + lengthWords(project, bit) + " cannot pass through cutout " + cutout.id;
    if (const auto neck = neckNear(cutout, place, bit)) {
        measure(finding, neck->gap.distance, bit);
        finding.lines = neck->lines;
        finding.at = 0.5 * (neck->gap.first + neck->gap.second);
        finding.text = start + ": between " + listText(neck->lines) + " it is " +
                       lengthWords(project, neck->gap.distance) + " wide. " +
                       moveRemedy(project, neck->gap.distance, bit);
        return finding;
    }
    finding.text = start + ": it falls into " + std::to_string(cutout.parts) +
                   " parts. Take a smaller bit, or widen it to " + atLeastWords(project, bit) +
                   " or more between them.";
    return finding;
}

// The widest stretch of the drawn cutout on one edge of the panel.
std::optional<OutlinePiece> mouthOf(const SolvedCutout& cutout) {
    std::optional<OutlinePiece> widest;
    for (const OutlineLoop& loop : cutout.drawn.loops) {
        for (const OutlinePiece& piece : loop) {
            if (liesOnEdge(piece) && (!widest || distance(piece.from, piece.to) > distance(widest->from, widest->to))) {
                widest = piece;
            }
        }
    }
    return widest;
}

Finding mouthTooNarrow(const Project& project, const Solved& solved, const SolvedCutout& cutout) {
    const double bit = 2 * solved.bitRadius;
    const auto mouth = mouthOf(cutout);
    Finding finding =
        narrow(cutout, Severity::Care, mouth ? 0.5 * (mouth->from + mouth->to) : cutout.widestAt);
    const std::string start = "The mouth of cutout " + cutout.id +
                              " at the panel's edge is too narrow for the bit of " +
                              lengthWords(project, bit) + " to leave by";
    if (mouth && distance(mouth->from, mouth->to) < bit) {
        const double width = distance(mouth->from, mouth->to);
        measure(finding, width, bit);
        finding.text = start + ": it is " + lengthWords(project, width) +
                       " wide. Start and end inside, and saw the mouth; or widen it by " +
                       atLeastWords(project, bit - width) + " or more.";
        return finding;
    }
    finding.text = start + ". Start and end inside, and saw the mouth; or widen it beyond " +
                   lengthWords(project, bit) + ".";
    return finding;
}

Finding bushDoesNotFit(const Project& project, const Solved& solved, const SolvedCutout& cutout) {
    const std::string guide = project.use.byBush ? "bush" : "bearing";
    Finding finding = narrow(cutout, Severity::Stop, cutout.widestAt);
    finding.lines = nearestWalls(cutout);
    finding.text = "The " + guide + " of " + lengthWords(project, solved.use.guide) +
                   " does not enter cutout " + cutout.id + " of the finished template. ";
    if (cutout.widest < solved.use.guide) {
        measure(finding, cutout.widest, solved.use.guide);
        finding.text += "It is " + lengthWords(project, cutout.widest) + " wide: take a " + guide + " of " +
                        atMostWords(project, cutout.widest) + " or less.";
    } else {
        finding.text += "Take one smaller than " + lengthWords(project, solved.use.guide) + ".";
    }
    return finding;
}

}  // namespace

std::vector<Finding> narrowFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (cutout.parts == 0) {
            all.push_back(doesNotFit(project, solved, cutout));
            continue;
        }
        if (cutout.parts > 1) {
            all.push_back(cannotPass(project, solved, cutout));
        }
        if (cutout.mouthClosed) {
            all.push_back(mouthTooNarrow(project, solved, cutout));
        }
        if (cutout.work.loops.empty() && !cutout.opening.loops.empty()) {
            all.push_back(bushDoesNotFit(project, solved, cutout));
        }
    }
    return all;
}

}  // namespace kerfwall
