// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print_wish.h"

namespace kerfwall {

Paper printPaper(const Project& project, const PrintWish& wish) {
    const auto paper = paperOf(project.printing.paper, project.panel);
    return laidPaper(project.panel, project.printing, paper ? *paper : *paperOf("a4", project.panel), wish.lie);
}

Sheets printSheets(const Project& project, const PrintWish& wish) {
    return sheetsFor(project.panel, project.printing, printPaper(project, wish));
}

}  // namespace kerfwall
