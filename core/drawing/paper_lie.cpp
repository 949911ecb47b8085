// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/paper_lie.h"

#include <algorithm>

#include "core/says/paper_name.h"

namespace kerfwall {
namespace {

constexpr const char* kLaid = "printer";  // sheetsFor leaves such paper as it lies

}  // namespace

Paper laidPaper(const Panel& panel, const Printing& printing, const Paper& paper, PaperLie lie) {
    if (paper.name == "panel") return paper;
    if (rollWidth(paper.name)) {  // cut as long as the pattern takes
        const Paper cut = sheetsFor(panel, printing, paper).paper;
        return {kLaid, cut.width, cut.height};
    }
    const auto [low, high] = std::minmax(paper.width, paper.height);
    const Paper upright{kLaid, low, high};
    const Paper onItsSide{kLaid, high, low};
    if (lie == PaperLie::Upright) return upright;
    if (lie == PaperLie::OnItsSide) return onItsSide;
    const std::size_t sheets = sheetsFor(panel, printing, upright).sheets.size();
    return sheetsFor(panel, printing, onItsSide).sheets.size() < sheets ? onItsSide : upright;
}

}  // namespace kerfwall
