// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print_labels.h"

#include "ui/paper_label.h"
#include "ui/print_pages.h"

namespace kerfwall {

std::expected<void, QString> printLabels(QPrinter& printer, const Project& project, const Solved& solved, const std::vector<Finding>& findings) {
    const Paper paper = paperIn(printer);
    const LabelGrid grid = labelGrid(paper);
    return printPages(printer, {grid.columns * grid.rows > 0 ? labelSheet(project, solved, findings, paper) : labelPage(project, solved, findings)});
}

}  // namespace kerfwall
