// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <expected>
#include <vector>

#include "core/drawing/sheets.h"
#include "ui/paper_pdf.h"

class QPrinter;

namespace kerfwall {

/// The paper a printer was set up with, edge to edge, as it lies.
[[nodiscard]] Paper paperIn(const QPrinter& printer);

/// Prints pages edge to edge on `printer` as it was set up; where it prints into a file, that file is written whole or not at all.
/// `progress` is told of each sheet, and says false to stop. Requires  at least one page.
/// Refuses   with one sentence where the printer does not take them, or it was stopped.
[[nodiscard]] std::expected<void, QString> printPages(QPrinter& printer, const std::vector<PaperPage>& pages,
                                                      const PaperProgress& progress = {});

}  // namespace kerfwall
