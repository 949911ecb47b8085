// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/remedies.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/geometry/marking.h"
#include "core/geometry/solve.h"
#include "core/says/length_text.h"
#include "core/shop/remedy_ways.h"

namespace kerfwall {
namespace {

constexpr std::size_t kMostTries = 24;
constexpr std::size_t kMostLinesSolved = 960;  // over all tries: 24 projects of 40 lines
constexpr std::size_t kLeastTries = 4;

/// Two findings that say the same of the same thing. The place may have moved with it.
bool isSameSubject(const Finding& a, const Finding& b) {
    return a.code == b.code && a.cutout == b.cutout && a.hole == b.hole && a.fence == b.fence;
}

bool isAsGrave(const Finding& one, const Finding& than) { return one.severity <= than.severity; }

std::ptrdiff_t countOf(const std::vector<Finding>& all, Severity severity) {
    return std::ranges::count(all, severity, &Finding::severity);
}

std::ptrdiff_t countAsGrave(const std::vector<Finding>& all, const Finding& finding, bool sameLines) {
    return std::ranges::count_if(all, [&](const Finding& each) {
        return isSameSubject(each, finding) && isAsGrave(each, finding) &&
               (!sameLines || each.lines == finding.lines);
    });
}

bool isLess(const std::vector<Finding>& before, const std::vector<Finding>& after, const Finding& finding) {
    return countAsGrave(after, finding, false) < countAsGrave(before, finding, false) &&
           countAsGrave(after, finding, true) < countAsGrave(before, finding, true);
}

bool hasNewStop(const std::vector<Finding>& before, const std::vector<Finding>& after) {
    return std::ranges::any_of(after, [&](const Finding& each) {
        return each.severity == Severity::Stop && countAsGrave(after, each, false) > countAsGrave(before, each, false);
    });
}

bool isLighter(const std::vector<Finding>& before, const std::vector<Finding>& after, Severity severity) {
    const auto weigh = [](const std::vector<Finding>& all) {
        return std::pair(countOf(all, Severity::Stop), countOf(all, Severity::Care));
    };
    return severity == Severity::Note ? weigh(after) <= weigh(before) : weigh(after) < weigh(before);
}

bool keepsFaces(const Project& before, const Project& after) {
    return std::ranges::equal(before.cutouts, after.cutouts, [](const Cutout& a, const Cutout& b) {
        return a.id == b.id && a.seeds.size() == b.seeds.size();
    });
}

class Trial {
  public:
    explicit Trial(const Minded& minded)
        : m_minded(minded),
          m_before(findings(minded.project, minded.solved)),
          m_left(std::clamp(kMostLinesSolved / std::max<std::size_t>(1, minded.project.lines.size()), kLeastTries,
                            kMostTries)) {}

    bool isOver() const { return m_left == 0 || m_found.size() == kMostRemedies; }
    std::vector<Remedy> found() && { return std::move(m_found); }

    /// The first change of that kind that clears the finding, else the first that lowers it.
    void go(Way&& way) {
        std::optional<Remedy> best;
        for (Change& change : way) {
            if (isOver() || (best && best->clears)) break;
            std::optional<Remedy> next = attempt(std::move(change));
            if (next && (!best || next->clears)) best = std::move(next);
        }
        if (!best) return;
        const auto isSame = [&](const Remedy& other) { return other.project == best->project; };
        if (std::ranges::none_of(m_found, isSame)) m_found.push_back(std::move(*best));
    }

  private:
    std::optional<Remedy> attempt(Change&& change) {
        const Project& before = m_minded.project;
        Project after = change.movesLines ? carryCutouts(before, m_minded.solved, std::move(change.project))
                                          : std::move(change.project);
        if (after == before || (!change.losesFaces && !keepsFaces(before, after))) return std::nullopt;
        if (!change.keepsAnswer) --m_left;
        Solved solved = change.keepsAnswer ? m_minded.solved : solve(after);
        const std::vector<Finding> now = findings(after, solved);
        const Finding& finding = m_minded.finding;
        if (!isLess(m_before, now, finding) || hasNewStop(m_before, now) ||
            !isLighter(m_before, now, finding.severity)) {
            return std::nullopt;
        }
        return Remedy{std::move(change.words), std::move(after), std::move(solved), isGone(now)};
    }

    bool isGone(const std::vector<Finding>& now) const {
        Finding any = m_minded.finding;
        any.severity = Severity::Note;
        return countAsGrave(now, any, true) < countAsGrave(m_before, any, true);
    }

    const Minded& m_minded;
    std::vector<Finding> m_before;
    std::size_t m_left;
    std::vector<Remedy> m_found;
};

}  // namespace

std::vector<Remedy> remedies(const Project& project, const Solved& solved, const Finding& finding) {
    const Minded minded{project, solved, finding};
    Trial trial(minded);
    for (const auto kind : {stopWays, depthWays, faceWays, holeWays, edgeWays, sawWays, bitWays, useWays, boreWays,
                            moveWays, wishWays, dropWays}) {
        for (Way& way : kind(minded)) {
            if (trial.isOver()) return std::move(trial).found();
            trial.go(std::move(way));
        }
    }
    return std::move(trial).found();
}

}  // namespace kerfwall
