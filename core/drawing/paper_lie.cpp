// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/paper_lie.h"

#include <algorithm>

#include "core/says/paper_name.h"

namespace kerfwall {
namespace {

constexpr const char* kLaid = "printer";  // sheetsFor leaves such paper as it lies

}  // namespace

bool canBeLaid(const Paper& paper) { return paper.name != "panel" && !rollWidth(paper.name); }

Paper laidPaper(const Paper& paper, PaperLie lie) {
    if (lie == PaperLie::Fewest || !canBeLaid(paper)) return paper;
    const auto [low, high] = std::minmax(paper.width, paper.height);
    return lie == PaperLie::Upright ? Paper{kLaid, low, high} : Paper{kLaid, high, low};
}

}  // namespace kerfwall
