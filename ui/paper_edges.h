// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/drawing/sheets.h"
#include "core/geometry/solved.h"
#include "core/shop/finding.h"
#include "ui/paper_pdf.h"

namespace kerfwall {

/// Strips as long as each panel edge with its marks, full size, to wrap over the edges; in pieces where they are longer than
/// the paper. A roll or a sheet as large as the panel: on A4.
[[nodiscard]] std::vector<PaperPage> edgeStripPages(const Project& project, const Solved& solved,
                                                    const std::vector<Finding>& findings, const Paper& paper);

}  // namespace kerfwall
