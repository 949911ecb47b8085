// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"

namespace kerfwall {

std::vector<Finding> sawFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> found;
    for (const SolvedLine& line : solved.lines) {
        for (const Kerf& kerf : line.kerfs) {
            if (kerf.saw) continue;
            if (!found.empty() && found.back().lines.front() == line.id) continue;
            Finding finding;
            finding.code = "bench-limit";
            finding.severity = Severity::Stop;
            finding.at = 0.5 * (line.from + line.to);
            finding.lines = {line.id};
            finding.text = "No saw on the bench can cut the kerf of " + line.id + "; it is drawn " +
                           lengthWords(project, kerf.width) + " wide. Add a saw that reaches " +
                           atLeastWords(project, distance(line.from, line.to)) +
                           " along this line, or lay the line along or square to the reference edge.";
            found.push_back(std::move(finding));
        }
    }
    return found;
}

}  // namespace kerfwall
