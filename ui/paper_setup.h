// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/drawing/sheets.h"
#include "core/shop/finding.h"
#include "core/shop/order_of_work.h"
#include "ui/paper_pdf.h"

namespace kerfwall {

/// The set-up sheet: both views, cautions, what to mind, and the order of work with settings large
/// enough to be read across a bench. Letter where the pattern's paper is American, else A4.
[[nodiscard]] std::vector<PaperPage> setupPages(const Project& project, const Solved& solved,
                                                const std::vector<Finding>& findings,
                                                const OrderOfWork& order, const Paper& paper);

}  // namespace kerfwall
