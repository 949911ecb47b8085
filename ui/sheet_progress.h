// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProgressDialog>

#include "ui/paper_pdf.h"

namespace kerfwall {

/// Tells how many sheets of the pattern are done, with a button to stop, where it takes longer than a glance.
class SheetProgress : public QProgressDialog {
    Q_OBJECT

public:
    explicit SheetProgress(QWidget* parent);

    /// To be handed to what makes the sheets; good as long as this stands.
    [[nodiscard]] PaperProgress teller();
};

}  // namespace kerfwall
