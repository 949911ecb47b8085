// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pattern_file.h"

#include "ui/paper_facts.h"
#include "ui/paper_pattern.h"
#include "ui/paper_text.h"
#include "ui/whole_file.h"

namespace kerfwall {

std::expected<void, QString> writePattern(const Project& project, const Solved& solved, const std::vector<Finding>& findings,
                                          const PrintWish& wish, const QString& path, const PaperProgress& progress) {
    const auto pdf = pdfOf(patternPages(project, solved, findings, printPaper(project, wish)), titleOf(project), progress);
    if (!pdf) return std::unexpected(pdf.error());
    const auto written = writeWhole(path, *pdf);
    if (written) return {};
    return std::unexpected(unwrittenSentence(path, written.error()));
}

}  // namespace kerfwall
