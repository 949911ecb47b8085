// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/pattern_file.h"

#include <unistd.h>

#include <QDir>
#include <QSaveFile>

#include "ui/paper_facts.h"
#include "ui/paper_pattern.h"
#include "ui/paper_pdf.h"
#include "ui/paper_text.h"

namespace kerfwall {

std::expected<void, QString> writePattern(const Project& project, const Solved& solved, const std::vector<Finding>& findings,
                                          const PrintWish& wish, const QString& path) {
    const auto pdf = pdfOf(patternPages(project, solved, findings, printPaper(project, wish)), titleOf(project));
    if (!pdf) return std::unexpected(pdf.error());
    QSaveFile file(path);
    const bool written = file.open(QIODevice::WriteOnly) && file.write(*pdf) == pdf->size() && file.flush() &&
                         ::fsync(file.handle()) == 0 && file.commit();
    if (written) return {};
    return std::unexpected(PaperWords::tr("%1 could not be written (%2); choose another folder or make room, and try again.")
                               .arg(QDir::toNativeSeparators(path), file.errorString()));
}

}  // namespace kerfwall
