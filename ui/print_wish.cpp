// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print_wish.h"

#include "core/drawing/pattern_drawing.h"

namespace kerfwall {

Paper printPaper(const Project& project, const PrintWish& wish) {
    const auto paper = paperOf(project.printing.paper, project.panel);
    return laidPaper(paper ? *paper : *paperOf("a4", project.panel), wish.lie);
}

Sheets printSheets(const Project& project, const Solved& solved, const PrintWish& wish) {
    return patternSheets(project, solved, printPaper(project, wish));
}

}  // namespace kerfwall
