// SPDX-License-Identifier: GPL-3.0-or-later
// How the window takes an outline from an SVG, and prints labels; its layout stands in main_window.cpp.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>

#include "core/geometry/clip.h"
#include "core/says/corner_list.h"
#include "core/shop/finding_words.h"
#include "core/shop/work_outline.h"
#include "ui/job_card.h"
#include "ui/main_window.h"
#include "ui/notice_bar.h"
#include "ui/plan_view.h"
#include "ui/print_labels.h"
#include "ui/svg_outline.h"
#include "ui/wanted_form.h"

namespace kerfwall {

void MainWindow::askOutline() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Take an outline from an SVG"), QFileInfo(m_session.path()).path(),
                                                      tr("SVG pictures (*.svg);;All files (*)"));
    if (!path.isEmpty()) importOutline(path);
}

void MainWindow::importOutline(const QString& path) {
    m_session.commit();
    const auto outline = openSvgOutline(path);
    const QString name = QFileInfo(path).fileName();
    if (!outline) return m_notice->tell(tr("%1: %2").arg(name, outline.error()));
    const Box box = boundsOf(*outline);
    const auto words = [this](double mm) { return QString::fromStdString(lengthWords(m_session.project(), mm)); };
    const QString sentence = tr("%1 holds an outline of %2 by %3 with %4 corners.")
                                 .arg(name, words(box.high.x - box.low.x), words(box.high.y - box.low.y))
                                 .arg(outline->size());
    m_notice->ask(sentence, {{tr("It is the workpiece"), [this, outline = *outline] { takeAsWorkpiece(outline); }},
                             {tr("It is wanted in the work"), [this, outline = *outline] { takeAsWanted(outline); }},
                             {tr("Leave it"), [this] { m_plan->setFocus(); }}});
}

void MainWindow::askLabels() {
    m_session.commit();
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(m_session.name());
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print a sheet of labels"));
    if (dialog.exec() != QDialog::Accepted) return;
    const auto printed = printLabels(printer, m_session.project(), m_session.solved(), m_session.findings());
    const QString went = printer.outputFileName().isEmpty() ? printer.printerName() : QDir::toNativeSeparators(printer.outputFileName());
    m_notice->tell(printed ? tr("A sheet of labels went to %1.").arg(went) : printed.error());
}

void MainWindow::takeAsWorkpiece(const std::vector<Point>& outline) {
    const auto next = withWorkOutline(m_session.project(), outline);
    if (!next) return m_notice->tell(QString::fromStdString(next.error()));
    m_session.change(tr("Take the workpiece from an SVG"), *next);
    putFirstAside();
    m_plan->setFocus();
}

void MainWindow::takeAsWanted(const std::vector<Point>& outline) {
    if (outline.size() > kMostCorners) {
        return m_notice->tell(tr("An opening wanted in the work has at most %1 corners, and this outline has %2; draw its rounds as "
                                 "sharp corners and say their radius on the form.")
                                  .arg(kMostCorners)
                                  .arg(outline.size()));
    }
    layWantedForm();
    m_wantedForm->takeCorners(outline);
}

}  // namespace kerfwall
