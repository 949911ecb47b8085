// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/solved.h"
#include "core/shop/finding.h"
#include "ui/paper_pdf.h"

namespace kerfwall {

/// The label for the finished template, 105 x 74 mm (A7 lying): title, sizes in the work, bush or
/// bearing and bit, panel; the date is left to be written by hand.
[[nodiscard]] PaperPage labelPage(const Project& project, const Solved& solved,
                                  const std::vector<Finding>& findings);

}  // namespace kerfwall
