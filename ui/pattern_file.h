// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <expected>

#include "core/geometry/solved.h"
#include "core/shop/finding.h"
#include "ui/paper_pdf.h"
#include "ui/print_wish.h"

namespace kerfwall {

/// Writes the full-size pattern as a PDF to that file, whole or not at all.
/// `progress` is told of each sheet, and says false to stop.
/// Refuses   with one sentence where it cannot be written or it was stopped; what stood there before is untouched.
[[nodiscard]] std::expected<void, QString> writePattern(const Project& project, const Solved& solved,
                                                        const std::vector<Finding>& findings, const PrintWish& wish,
                                                        const QString& path, const PaperProgress& progress = {});

}  // namespace kerfwall
