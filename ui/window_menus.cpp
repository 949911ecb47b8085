// SPDX-License-Identifier: GPL-3.0-or-later
// The window's menus, but for what is looked at (window_looking.cpp); its layout stands in main_window.cpp.
#include <QApplication>
#include <QMenu>
#include <QMenuBar>

#include "ui/header_line.h"
#include "ui/job_card.h"
#include "ui/keys_form.h"
#include "ui/main_window.h"
#include "ui/rack.h"
#include "ui/sheet_form.h"

namespace kerfwall {

void MainWindow::makeMenus() {
    makeFileMenu();
    makeEditMenu();
    QMenu* panel = m_header->menus()->addMenu(tr("&Panel"));
    panel->addAction(tr("&Size, thickness, material, kerf depth and true edges"), QKeySequence(Qt::Key_F6), this, [this] { layForm(m_panelForm); });
    panel->addAction(tr("From the size &wanted in the work"), QKeySequence(Qt::Key_F8), this, &MainWindow::layWantedForm);
    m_rack = panel->addAction({}, this, &MainWindow::switchRack);
    m_rack->setObjectName(QStringLiteral("rack"));
    connect(panel, &QMenu::aboutToShow, this, [this] {
        const bool lies = liesInRack(stockPanelOf(m_session.project()));
        m_rack->setText(lies ? tr("&Take this size out of the rack") : tr("&Put this size in the rack"));
    });
    panel->addAction(tr("The &line that is picked, how it was laid, its saw"), QKeySequence(Qt::CTRL | Qt::Key_L), this, &MainWindow::layLineForm);
    panel->addAction(tr("The &fence that is picked, its size and face"), QKeySequence(Qt::SHIFT | Qt::Key_F6), this, &MainWindow::layFenceForm);
    panel->addAction(tr("The wor&kpiece under it, its size, place and grain"), QKeySequence(Qt::SHIFT | Qt::Key_F8), this,
                     [this] { layForm(m_workpieceForm); });
    panel->addAction(tr("What was &measured while making it"), QKeySequence(Qt::CTRL | Qt::Key_E), this, &MainWindow::layRecordForm);
    QMenu* bench = m_header->menus()->addMenu(tr("&Bench"));
    bench->addAction(tr("&Trimming bit, bearing or bush in use"), QKeySequence(Qt::Key_F7), this, [this] { layForm(m_useForm); });
    bench->addAction(tr("The &whole bench: saws, drills, clamps, what is at hand"), QKeySequence(Qt::SHIFT | Qt::Key_F7), this, &MainWindow::layBenchForm);
    makeViewMenu();
    QMenu* help = m_header->menus()->addMenu(tr("&Help"));
    help->addAction(tr("&Keys"), QKeySequence(Qt::Key_F1), this, &MainWindow::layKeys);
}

void MainWindow::makeFileMenu() {
    QMenu* file = m_header->menus()->addMenu(tr("&File"));
    file->addAction(tr("&New"), QKeySequence::New, this, &MainWindow::askNew);
    file->addAction(tr("New &window"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N), this, &MainWindow::openWindow);
    file->addAction(tr("&Open…"), QKeySequence::Open, this, &MainWindow::askOpen);
    m_recent = file->addMenu(tr("Open &recent"));
    connect(m_recent, &QMenu::aboutToShow, this, &MainWindow::showRecent);
    file->addSeparator();
    file->addAction(tr("&Save"), QKeySequence::Save, this, &MainWindow::save);
    file->addAction(tr("Save &as…"), QKeySequence::SaveAs, this, &MainWindow::saveAs);
    file->addSeparator();
    file->addAction(tr("Take an outline from an S&VG…"), this, &MainWindow::askOutline);
    file->addSeparator();
    file->addAction(tr("&Print the pattern…"), QKeySequence::Print, this, &MainWindow::layPrintForm);
    file->addAction(tr("Print a sheet of &labels…"), this, &MainWindow::askLabels);
    file->addAction(tr("Pu&blish the papers…"), this, &MainWindow::askPublish);
    file->addSeparator();
    file->addAction(tr("&Quit"), QKeySequence::Quit, qApp, &QApplication::closeAllWindows);
}

void MainWindow::makeEditMenu() {
    QMenu* edit = m_header->menus()->addMenu(tr("&Edit"));
    m_undo = edit->addAction(tr("&Undo"), QKeySequence::Undo, &m_session, &Session::undo);
    m_undo->setObjectName(QStringLiteral("undo"));
    m_redo = edit->addAction(tr("&Redo"), &m_session, &Session::redo);
    m_redo->setObjectName(QStringLiteral("redo"));
    m_redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    edit->addSeparator();
    makePickedMenu(edit);
}

void MainWindow::layKeys() {
    m_card->layForm(m_keysForm);
    m_keysForm->focusFirst();
    refreshFirst();
}

}  // namespace kerfwall
