// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet_progress.h"

namespace kerfwall {
namespace {

constexpr int kGlance = 400;  // ms: shown only where the whole would take longer

}  // namespace

SheetProgress::SheetProgress(QWidget* parent) : QProgressDialog(tr("The pattern's sheets"), tr("Stop"), 0, 1, parent) {
    setObjectName(QStringLiteral("sheetProgress"));
    setWindowTitle(tr("Full-size pattern"));
    setWindowModality(Qt::WindowModal);
    setMinimumDuration(kGlance);
}

PaperProgress SheetProgress::teller() {
    return [this](std::size_t sheet, std::size_t all) {
        setMaximum(static_cast<int>(all) + 1);  // the last step is the writing itself
        setValue(static_cast<int>(sheet));
        setLabelText(tr("Sheet %1 of %2").arg(sheet).arg(all));
        return !wasCanceled();
    };
}

}  // namespace kerfwall
