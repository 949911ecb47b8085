// SPDX-License-Identifier: GPL-3.0-or-later
// The window's menus; its layout stands in main_window.cpp.
#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>
#include <QSettings>

#include "ui/header_line.h"
#include "ui/main_window.h"
#include "ui/notice_bar.h"
#include "ui/plan_view.h"
#include "ui/sheet_form.h"

namespace kerfwall {
namespace {

constexpr double kZoomStep = 1.25;

}  // namespace

void MainWindow::makeMenus() {
    makeFileMenu();
    makeEditMenu();
    QMenu* line = m_header->menus()->addMenu(tr("&Line"));
    line->addAction(tr("&How it was laid, its name, its saw"), QKeySequence(Qt::Key_F5), this, &MainWindow::layLineForm);
    QMenu* panel = m_header->menus()->addMenu(tr("&Panel"));
    panel->addAction(tr("&Size, thickness, kerf depth and true edges"), QKeySequence(Qt::Key_F6), this, [this] { layForm(m_panelForm); });
    panel->addAction(tr("A &window from the size wanted in the work"), QKeySequence(Qt::Key_F8), this, &MainWindow::layWantedForm);
    QMenu* bench = m_header->menus()->addMenu(tr("&Bench"));
    bench->addAction(tr("&Trimming bit, bearing or bush in use"), QKeySequence(Qt::Key_F7), this, [this] { layForm(m_useForm); });
    makeViewMenu();
    QMenu* help = m_header->menus()->addMenu(tr("&Help"));
    help->addAction(tr("&Keys"), QKeySequence(Qt::Key_F1), this, &MainWindow::tellKeys);
}

void MainWindow::makeFileMenu() {
    QMenu* file = m_header->menus()->addMenu(tr("&File"));
    file->addAction(tr("&New"), QKeySequence::New, this, &MainWindow::askNew);
    file->addAction(tr("&Open…"), QKeySequence::Open, this, &MainWindow::askOpen);
    m_recent = file->addMenu(tr("Open &recent"));
    connect(m_recent, &QMenu::aboutToShow, this, &MainWindow::showRecent);
    file->addSeparator();
    file->addAction(tr("&Save"), QKeySequence::Save, this, &MainWindow::save);
    file->addAction(tr("Save &as…"), QKeySequence::SaveAs, this, &MainWindow::saveAs);
    file->addSeparator();
    file->addAction(tr("&Print the pattern…"), QKeySequence::Print, this, &MainWindow::print);
    file->addAction(tr("Pu&blish the papers…"), this, &MainWindow::askPublish);
    file->addSeparator();
    file->addAction(tr("&Quit"), QKeySequence::Quit, this, &QWidget::close);
}

void MainWindow::makeEditMenu() {
    QMenu* edit = m_header->menus()->addMenu(tr("&Edit"));
    m_undo = edit->addAction(tr("&Undo"), QKeySequence::Undo, &m_session, &Session::undo);
    m_undo->setObjectName(QStringLiteral("undo"));
    m_redo = edit->addAction(tr("&Redo"), &m_session, &Session::redo);
    m_redo->setObjectName(QStringLiteral("redo"));
    m_redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    edit->addSeparator();
    edit->addAction(tr("&Pick everything"), QKeySequence::SelectAll, this, &MainWindow::pickAll);
    m_delete = edit->addAction(tr("&Take away what is picked"), QKeySequence(Qt::Key_Delete), this, &MainWindow::deletePicked);
}

void MainWindow::addLayer(QMenu* menu, const QString& text, bool PlanLayers::*layer) {
    QAction* action = menu->addAction(text);
    action->setCheckable(true);
    action->setChecked(m_plan->layers().*layer);
    connect(action, &QAction::toggled, this, [this, layer](bool shown) {
        m_plan->layers().*layer = shown;
        m_plan->update();
    });
}

void MainWindow::makeViewMenu() {
    QMenu* view = m_header->menus()->addMenu(tr("&View"));
    QAction* nearer = view->addAction(tr("Zoom &in"), this, [this] { m_plan->zoom(kZoomStep); });
    nearer->setShortcuts({QKeySequence(Qt::CTRL | Qt::Key_Plus), QKeySequence(Qt::CTRL | Qt::Key_Equal)});
    view->addAction(tr("Zoom &out"), QKeySequence(Qt::CTRL | Qt::Key_Minus), this, [this] { m_plan->zoom(1 / kZoomStep); });
    view->addAction(tr("&Whole panel"), QKeySequence(Qt::CTRL | Qt::Key_0), m_plan, &PlanView::fit);
    view->addSeparator();
    addLayer(view, tr("&Kerfs"), &PlanLayers::kerfs);
    addLayer(view, tr("&Run-out of stopped kerfs"), &PlanLayers::runOut);
    addLayer(view, tr("&Edge marks"), &PlanLayers::edgeMarks);
    addLayer(view, tr("O&pening in the template"), &PlanLayers::opening);
    addLayer(view, tr("Opening in the wor&k"), &PlanLayers::work);
    addLayer(view, tr("&Dimensions"), &PlanLayers::dimensions);
    addLayer(view, tr("&Findings"), &PlanLayers::findings);
    view->addSeparator();
    view->addAction(tr("Millimetres or i&nches"), QKeySequence(Qt::Key_F9), this, &MainWindow::switchUnits);
    auto* looks = new QActionGroup(this);
    const QStringList names{tr("Look as the &system"), tr("&Light"), tr("&Dark")};
    const int worn = QSettings().value(QStringLiteral("look")).toInt();
    for (int i = 0; i < names.size(); ++i) {
        QAction* action = view->addAction(names[i], this, [this, i] { setLook(static_cast<Look>(i)); });
        action->setCheckable(true);
        action->setChecked(i == worn);
        looks->addAction(action);
    }
}

void MainWindow::tellKeys() {
    m_notice->tell(tr("1 to 6 take a tool; with Ctrl also while numbers go to a line in hand or just laid. Over the plan the arrow keys move what is picked, else a pointer that Space clicks with; "
                      "Shift moves ten steps. Tab goes from one thing to the next, Enter to the entry line, Esc leaves what is in hand. "
                      "Ctrl with the wheel, + or − zooms, Ctrl+0 shows the whole panel. F5 shows how a line was laid, F6 opens the panel, F7 the bits, F8 the size wanted."));
}

}  // namespace kerfwall
