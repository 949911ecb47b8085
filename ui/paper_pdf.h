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

/// Told after each page how many of how many are done; says false to stop.
using PaperProgress = std::function<bool(std::size_t done, std::size_t all)>;

/// The pages, all of the first one's size, as a PDF: pages exactly as large as asked for, no scaling
/// when printed, no date. Same pages, same bytes. Requires  at least one page.
/// Refuses   with one sentence where the PDF could not be made, or where `progress` said to stop.
[[nodiscard]] std::expected<QByteArray, QString> pdfOf(const std::vector<PaperPage>& pages, const QString& title,
                                                       const PaperProgress& progress = {});

/// What is said where the maker stopped it.
[[nodiscard]] QString stoppedSentence();

}  // namespace kerfwall
