// SPDX-License-Identifier: GPL-3.0-or-later
// The window's View menu, and what it does: how the sheet is looked at.
#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>
#include <QScreen>
#include <QSettings>

#include "core/geometry/picking.h"
#include "ui/header_line.h"
#include "ui/job_card.h"
#include "ui/kept_layers.h"
#include "ui/main_window.h"
#include "ui/notice_bar.h"
#include "ui/plan_view.h"
#include "ui/screen_form.h"
#include "ui/screen_scale.h"
#include "ui/sheet_views.h"
#include "ui/step_view.h"

namespace kerfwall {
namespace {

constexpr double kZoomStep = 1.25;
constexpr double kRoundFinding = 40;  // mm shown on each side of a finding's place

}  // namespace

void MainWindow::makeViewMenu() {
    QMenu* view = m_header->menus()->addMenu(tr("&View"));
    QAction* nearer = view->addAction(tr("Zoom &in"), this, [this] { m_plan->zoom(kZoomStep); });
    nearer->setShortcuts({QKeySequence(Qt::CTRL | Qt::Key_Plus), QKeySequence(Qt::CTRL | Qt::Key_Equal)});
    view->addAction(tr("Zoom &out"), QKeySequence(Qt::CTRL | Qt::Key_Minus), this, [this] { m_plan->zoom(1 / kZoomStep); });
    view->addAction(tr("&Whole panel"), QKeySequence(Qt::CTRL | Qt::Key_0), m_plan, &PlanView::fit);
    m_showPicked = view->addAction(tr("&Picked, close up"), QKeySequence(Qt::Key_F2), this, &MainWindow::showPicked);
    view->addAction(tr("Li&fe size"), QKeySequence(Qt::Key_F3), this, &MainWindow::showLifeSize);
    view->addAction(tr("&Hold a ruler to the screen"), this, &MainWindow::layScreenForm);
    view->addSeparator();
    view->addAction(tr("&Next finding"), QKeySequence(Qt::Key_F4), this, [this] { goToFinding(1); });
    view->addAction(tr("Pre&vious finding"), QKeySequence(Qt::SHIFT | Qt::Key_F4), this, [this] { goToFinding(-1); });
    view->addAction(tr("N&ext step of the order of work"), QKeySequence(Qt::Key_F11), this, [this] { goToStep(1); });
    view->addAction(tr("Previo&us step"), QKeySequence(Qt::SHIFT | Qt::Key_F11), this, [this] { goToStep(-1); });
    view->addSeparator();
    makeSideViewMenu(view);
    makeLayerMenu(view);
    view->addSeparator();
    view->addAction(tr("&Millimetres or inches"), QKeySequence(Qt::Key_F9), this, &MainWindow::switchUnits);
    auto* looks = new QActionGroup(this);
    const QStringList names{tr("Look as the s&ystem"), tr("&Light"), tr("&Dark")};
    const int worn = QSettings().value(QStringLiteral("look")).toInt();
    for (int i = 0; i < names.size(); ++i) {
        QAction* action = view->addAction(names[i], this, [this, i] { setLook(static_cast<Look>(i)); });
        action->setCheckable(true);
        action->setChecked(i == worn);
        looks->addAction(action);
    }
}

void MainWindow::makeSideViewMenu(QMenu* view) {
    QMenu* sides = view->addMenu(tr("&Side views"));
    auto* group = new QActionGroup(this);
    const QStringList names{tr("From the &bottom edge"), tr("From the &right edge"), tr("B&oth, where there is room")};
    QList<QAction*> actions;
    for (int i = 0; i < names.size(); ++i) {
        QAction* action = sides->addAction(names[i], this, [this, i] { m_views->wishFor(static_cast<SheetViews::Sides>(i)); });
        action->setObjectName(QStringLiteral("sides%1").arg(i));
        action->setCheckable(true);
        group->addAction(action);
        actions << action;
    }
    const auto check = [this, actions] { actions[static_cast<int>(m_views->wish())]->setChecked(true); };
    connect(m_views, &SheetViews::wishChanged, this, check);
    check();
    sides->addSeparator();
    sides->addAction(tr("The &other one"), QKeySequence(Qt::Key_F5), m_views, &SheetViews::showNext);
}

void MainWindow::makeLayerMenu(QMenu* view) {
    QMenu* menu = view->addMenu(tr("Sho&wn on the plan"));
    m_plan->setLayers(keptLayers());
    const auto put = [this](const PlanLayers& layers) {
        m_plan->setLayers(layers);
        keepLayers(layers);
    };
    QList<QAction*> actions;
    int key = Qt::Key_1;
    for (const LayerChoice& choice : layerChoices()) {
        QAction* action = menu->addAction(choice.text);
        action->setObjectName(choice.key);
        action->setShortcut(QKeyCombination(Qt::ALT, static_cast<Qt::Key>(key++)));
        action->setCheckable(true);
        action->setChecked(m_plan->layers().*choice.layer);
        connect(action, &QAction::toggled, this, [this, put, layer = choice.layer](bool shown) {
            PlanLayers layers = m_plan->layers();
            layers.*layer = shown;
            put(layers);
        });
        actions << action;
    }
    menu->addSeparator();
    QAction* base = menu->addAction(tr("The router's &base round the pointer"));
    base->setObjectName(QStringLiteral("routerBase"));
    base->setShortcut(QKeyCombination(Qt::ALT, Qt::Key_9));
    base->setCheckable(true);
    connect(base, &QAction::toggled, this, [this](bool shown) {
        m_plan->setBaseShown(shown);
        if (shown && !benchOf(m_session.project()).base) m_notice->tell(tr("The bench has no router's base: give its diameter in the Bench menu, The whole bench."));
    });
    menu->addAction(tr("&All of them"), QKeySequence(Qt::ALT | Qt::Key_0), this, [actions] {
        for (QAction* action : actions) action->setChecked(true);
    });
}

void MainWindow::showPicked() {
    const Picked picked = stillThere(m_session.project(), m_selection.picked());
    if (!picked.isEmpty()) m_plan->showClose(boundsOf(m_session.project(), m_session.solved(), picked));
}

/// Asks for a ruler until one was held to this screen.
void MainWindow::showLifeSize() {
    m_plan->showLifeSize();
    if (!isMeasured(*screen())) layScreenForm();
}

void MainWindow::layScreenForm() {
    m_card->layForm(m_screenForm);
    m_screenForm->focusFirst();
    refreshFirst();
}

void MainWindow::goToStep(int by) {
    m_session.commit();
    if (!m_steps->go(by)) m_notice->tell(tr("There is no order of work yet: lay lines from edge to edge and mark the waste between them."));
}

void MainWindow::leaveSteps() { m_steps->close(); }

void MainWindow::goToFinding(int by) {
    const std::optional<std::size_t> index = m_card->stepFinding(by);
    if (!index) return m_notice->tell(tr("There is nothing to mind: no finding to go to."));
    const std::optional<Point> at = m_session.findings()[*index].at;
    if (!at) return m_plan->fit();
    const Point round{kRoundFinding, kRoundFinding};
    m_plan->showClose({*at - round, *at + round});
}

}  // namespace kerfwall
