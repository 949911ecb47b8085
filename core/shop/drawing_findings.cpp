// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shop/finding_groups.h"
#include "core/shop/finding_words.h"

namespace kerfwall {
namespace {

std::string sentence(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    if (!text.empty() && text.back() != '.') {
        text += '.';
    }
    return text;
}

}  // namespace

std::vector<Finding> drawingFindings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const DrawingTrouble& trouble : solved.troubles) {
        Finding finding;
        finding.code = "drawing";
        finding.severity = Severity::Stop;
        finding.at = trouble.at;
        finding.lines = trouble.lines;
        finding.cutout = trouble.cutout;
        finding.text = sentence(trouble.sentence) + " The place is " + placeWords(project, trouble.at) +
                       "; until it is mended it is left out.";
        all.push_back(finding);
    }
    for (const SolvedCutout& cutout : solved.cutouts) {
        for (const Doubt& doubt : cutout.doubts) {
            Finding finding;
            finding.code = "unsure";
            finding.severity = Severity::Stop;
            finding.at = doubt.at;
            finding.cutout = cutout.id;
            finding.text = sentence(doubt.what) + " Move a line that comes near " +
                           placeWords(project, doubt.at) + " by " + lengthWords(project, 0.01) + " or more.";
            all.push_back(finding);
        }
    }
    return all;
}

}  // namespace kerfwall
