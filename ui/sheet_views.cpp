// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/sheet_views.h"

#include <QEvent>
#include <QGridLayout>
#include <QSettings>
#include <algorithm>

#include "ui/plan_view.h"
#include "ui/session.h"
#include "ui/side_view_panel.h"
#include "ui/step_view.h"

namespace kerfwall {
namespace {

constexpr int kPlanBesideSide = 700;  // pixels the plan keeps where both side views stand
const QString kWishKey = QStringLiteral("sideViews");

}  // namespace

SheetViews::SheetViews(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), m_session(session), m_plan(new PlanView(session, selection, this)),
      m_level(new SideViewPanel(session, CutDirection::Level, this)),
      m_upright(new SideViewPanel(session, CutDirection::Upright, this)),
      m_steps(new StepView(session, this)) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(0);
    grid->addWidget(m_plan, 0, 0);
    grid->addWidget(m_upright, 0, 1);
    grid->addWidget(m_level, 1, 0, 1, 2);
    grid->addWidget(m_steps, 0, 0, 2, 2);
    grid->setRowStretch(0, 1);
    grid->setColumnStretch(0, 1);
    for (SideViewPanel* side : {m_level, m_upright}) {
        connect(m_plan, &PlanView::scaleChanged, side, [this, side] { side->follow(m_plan->viewScale()); });
        connect(m_plan, &PlanView::layersChanged, side, [this, side] { side->setLayers(m_plan->layers()); });
    }
    connect(m_steps, &StepView::opened, this, &SheetViews::arrange);
    connect(m_steps, &StepView::closed, this, &SheetViews::arrange);
    const int kept = QSettings().value(kWishKey, static_cast<int>(Sides::Both)).toInt();
    m_wish = static_cast<Sides>(std::clamp(kept, 0, static_cast<int>(Sides::Both)));
    arrange();
}

bool SheetViews::hasRoomForBoth() const { return width() >= kPlanBesideSide + m_upright->sizeHint().width(); }

void SheetViews::wishFor(Sides sides) {
    if (sides == m_wish) return;
    m_wish = sides;
    QSettings().setValue(kWishKey, static_cast<int>(sides));
    arrange();
    Q_EMIT wishChanged();
}

void SheetViews::showNext() {
    const bool upright = m_session.isCutShown(CutDirection::Upright);
    const bool both = upright && m_session.isCutShown(CutDirection::Level);
    if (both) return wishFor(Sides::FromBottom);
    if (!upright) return wishFor(Sides::FromRight);
    wishFor(hasRoomForBoth() ? Sides::Both : Sides::FromBottom);
}

void SheetViews::arrange() {
    m_plan->setVisible(!m_steps->step());
    if (m_steps->step()) {
        m_level->hide();
        m_upright->hide();
        return;
    }
    const bool both = m_wish == Sides::Both && hasRoomForBoth();
    const bool upright = both || m_wish == Sides::FromRight;
    const bool level = both || !upright;
    const bool hadFocus = m_level->hasFocus() || m_upright->hasFocus();
    m_level->setVisible(level);
    m_upright->setVisible(upright);
    if (hadFocus) (upright ? m_upright : m_level)->setFocus();
    m_session.showCuts(level, upright);
}

void SheetViews::resizeEvent(QResizeEvent*) {
    arrange();
    placeCover();
}

void SheetViews::layOver(QWidget* cover) {
    m_cover = cover;
    m_cover->setParent(this);
    m_cover->installEventFilter(this);
    placeCover();
}

bool SheetViews::eventFilter(QObject* watched, QEvent* event) {
    const bool grows = event->type() == QEvent::LayoutRequest || event->type() == QEvent::Show;
    if (watched == m_cover && grows) placeCover();
    return QWidget::eventFilter(watched, event);
}

void SheetViews::placeCover() {
    if (!m_cover) return;
    const int high = m_cover->hasHeightForWidth() ? m_cover->heightForWidth(width()) : m_cover->sizeHint().height();
    m_cover->setGeometry(0, 0, width(), high);
    m_cover->raise();
}

}  // namespace kerfwall
