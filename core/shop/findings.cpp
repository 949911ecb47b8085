// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <string_view>

#include "core/shop/finding_groups.h"

namespace kerfwall {
namespace {

// In the order of the report's table.
constexpr std::array<std::string_view, 35> kCodes{
    "corner-groove", "corner-overlap", "corner-short", "narrow",      "drawing",     "wall-nick",
    "wall-lost",     "web-thin",       "wall-low",     "rough-room",  "border-thin", "drill-wide",
    "arm-flex",      "hole-through",   "hole-wall",    "hole-kerf",   "clamp-reach", "bit-short",
    "bush-corner",   "bush-fit",       "web-ride",     "first-pass",  "work-size",   "work-uncut",
    "work-heavy",    "runout",         "bore-missing", "edge-untrue", "bench-limit", "small-stock",
    "base-tips",     "run-in",         "grain",        "fence-side",  "unsure"};

std::size_t rankOf(std::string_view code) {
    return static_cast<std::size_t>(std::find(kCodes.begin(), kCodes.end(), code) - kCodes.begin());
}

bool comesBefore(const Finding& a, const Finding& b) {
    return a.severity != b.severity ? a.severity < b.severity : rankOf(a.code) < rankOf(b.code);
}

}  // namespace

Finding measuredFinding(const char* code, Severity severity, double value, double limit) {
    Finding finding;
    finding.code = code;
    finding.severity = severity;
    finding.value = value;
    finding.limit = limit;
    finding.unit = "mm";
    return finding;
}

std::vector<Finding> findings(const Project& project, const Solved& solved) {
    std::vector<Finding> all;
    for (const auto group : {cornerFindings, narrowFindings, drawingFindings, wallFindings, panelFindings, sawFindings,
                             roughFindings, borderFindings, holeFindings, runoutFindings, workFindings, boreFindings,
                             edgeFindings, fenceFindings, flexFindings, useFindings}) {
        for (Finding& finding : group(project, solved)) {
            all.push_back(std::move(finding));
        }
    }
    std::stable_sort(all.begin(), all.end(), comesBefore);
    return all;
}

}  // namespace kerfwall
