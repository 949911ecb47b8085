// SPDX-License-Identifier: GPL-3.0-or-later
// How the window prints the pattern; its layout stands in main_window.cpp.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrinterInfo>

#include "ui/job_card.h"
#include "ui/main_window.h"
#include "ui/notice_bar.h"
#include "ui/papers.h"
#include "ui/pattern_file.h"
#include "ui/plan_view.h"
#include "ui/print_form.h"
#include "ui/print_rows.h"
#include "ui/printers.h"
#include "ui/sheet_progress.h"

namespace kerfwall {

void MainWindow::layPrintForm() {
    m_session.commit();
    leaveSteps();
    m_card->layForm(m_printForm);
    m_printForm->focusFirst();
    refreshFirst();
}

QString MainWindow::writtenSentence(const QString& path) {
    return tr("The pattern lies in %1: print it without scaling.").arg(QDir::toNativeSeparators(path));
}

void MainWindow::print() {
    m_session.commit();
    if (!m_printForm->hasPrinters()) {
        return m_notice->tell(tr("No printer is set up on this computer: write the PDF, and print it where there is one, without scaling."));
    }
    const QString name = m_printForm->printer().isEmpty() ? QPrinterInfo::defaultPrinterName() : m_printForm->printer();
    const QPrinterInfo info = QPrinterInfo::printerInfo(name);
    if (info.isNull()) return m_notice->tell(tr("“%1” does not answer: see that it is switched on and set up, or write the PDF.").arg(name));
    QPrinter printer(info, QPrinter::HighResolution);
    printer.setDocName(m_session.name());
    setUp(printer, m_printForm->laidPaper());
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print the pattern full size"));
    if (dialog.exec() != QDialog::Accepted) return;
    Project project = m_session.project();
    // Another printer than the form has goes by what was measured off its own prints.
    if (printer.printerName() != m_printForm->printer()) takeKeptScale(project, m_printForm->laidPaper(), printer.printerName());
    SheetProgress progress(this);
    const auto printed = printPattern(printer, project, m_session.solved(), m_session.findings(), progress.teller());
    if (!printed) return m_notice->tell(printed.error());
    m_printForm->tellPrinted();
    m_notice->tell(printer.outputFileName().isEmpty() ? tr("The pattern went to “%1”. Measure its bars before you glue it on.").arg(printer.printerName())
                                                      : writtenSentence(printer.outputFileName()));
}

bool MainWindow::writePatternTo(const QString& path) {
    m_session.commit();
    SheetProgress progress(this);
    const auto written = writePattern(m_session.project(), m_session.solved(), m_session.findings(), m_printForm->wish(), path, progress.teller());
    m_notice->tell(written ? writtenSentence(path) : written.error());
    if (written) m_printForm->tellPrinted();
    return written.has_value();
}

void MainWindow::askPatternPdf() {
    const QString folder = QFileInfo(m_session.path()).path();
    QString path = QFileDialog::getSaveFileName(this, tr("Write the pattern"), QDir(folder).filePath(m_session.name() + QStringLiteral(".pdf")),
                                                tr("PDF (*.pdf)"));
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".pdf");
    writePatternTo(path);
}

}  // namespace kerfwall
