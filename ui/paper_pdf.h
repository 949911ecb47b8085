// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QPainter>
#include <QString>
#include <expected>
#include <functional>
#include <vector>

namespace kerfwall {

/// A page: its painter counts in mm from the top-left corner, y down.
struct PaperPage {
    double width = 0;   ///< mm
    double height = 0;  ///< mm
    std::function<void(QPainter&)> paint;
};

/// The pages, all of the first one's size, as a PDF: pages exactly as large as asked for, no scaling
/// when printed, no date. Same pages, same bytes. Requires  at least one page.
/// Refuses   with one sentence where the PDF could not be made.
[[nodiscard]] std::expected<QByteArray, QString> pdfOf(const std::vector<PaperPage>& pages,
                                                       const QString& title);

}  // namespace kerfwall
