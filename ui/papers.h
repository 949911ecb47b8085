// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <expected>
#include <vector>

#include "core/drawing/sheets.h"
#include "core/shop/finding.h"
#include "core/shop/order_of_work.h"
#include "ui/paper_pdf.h"

class QPrinter;

namespace kerfwall {

/// Whether strips to wrap over the edges are among the papers; the command line's are the contract's six.
enum class EdgeStrips { LeftOut, Made };

/// Writes the maker's papers into `dir`: pattern.pdf (full size, tiled), pattern.svg (full size),
/// setup-sheet.pdf, label.pdf, picture.png, report.json. With the strips edge-marks.pdf too.
/// Makes `dir` where it is not there.
/// All or nothing: everything is made before the first file is replaced, each file is replaced whole.
/// Same input, same bytes. Needs a QGuiApplication.
/// `progress` is told of each sheet of the pattern, and says false to stop: nothing is written then.
/// Refuses   with one sentence where a file cannot be written or it was stopped; what stood there before is untouched.
[[nodiscard]] std::expected<void, QString> publishPapers(const Project& project, const Solved& solved,
                                                         const std::vector<Finding>& findings,
                                                         const OrderOfWork& order, const QString& dir,
                                                         const Paper& paper,
                                                         const PaperProgress& progress = {},
                                                         EdgeStrips strips = EdgeStrips::LeftOut);

/// Prints the full-size pattern, the same sheets as pattern.pdf, on `printer` as it was set up in the
/// print dialog: its paper and orientation count. `progress` is told of each sheet, and says false to
/// stop. Says why where it could not.
[[nodiscard]] std::expected<void, QString> printPattern(QPrinter& printer, const Project& project,
                                                        const Solved& solved,
                                                        const std::vector<Finding>& findings,
                                                        const PaperProgress& progress = {});

}  // namespace kerfwall
