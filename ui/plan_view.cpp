// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plan_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <algorithm>
#include <cmath>

#include "core/drawing/sign_at.h"
#include "core/geometry/picking.h"
#include "ui/cut_on_plan.h"
#include "ui/cut_tool.h"
#include "ui/hand_step.h"
#include "ui/rulers.h"
#include "ui/selection.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

constexpr double kReachPixels = 12;    // how near the pointer catches a thing: targets of 24 pixels, WCAG 2.2, 2.5.8

}  // namespace

PlanView::PlanView(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), m_session(session), m_selection(selection) {
    setObjectName(QStringLiteral("plan"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("Plan of the panel, layout face up"));
    connect(&m_session, &Session::changed, this, [this] {
        if (m_fitted) fit();
        renewGround();
    });
    connect(&m_session, &Session::opened, this, [this] {
        m_pointedOut.clear();
        m_pointedAt.reset();
        fit();
    });
    connect(&m_session, &Session::cutMoved, this, &PlanView::renewGround);
    connect(&m_selection, &Selection::changed, this, qOverload<>(&PlanView::update));
}

void PlanView::setTool(Tool* tool) {
    if (m_tool) disconnect(m_tool, nullptr, this, nullptr);
    m_tool = tool;
    connect(m_tool, &Tool::updated, this, qOverload<>(&PlanView::update));
    dressPointer();
    update();
}

void PlanView::foresee(const InHand& shown) {
    m_foreseen = shown;
    update();
}

void PlanView::laySheets(const Drawing& sheets) {
    if (sheets == m_sheets) return;
    m_sheets = sheets;
    if (m_fitted) fit();
    update();
}

void PlanView::pointOut(const std::vector<LineId>& lines, std::optional<Point> at) {
    m_pointedOut = lines;
    m_pointedAt = at;
    if (at) bringIntoView(*at);
    update();
}

std::optional<std::size_t> PlanView::signUnder(QPointF pixel) const {
    constexpr double kSignReach = 10;  // pixels: half a sign and a little more
    const bool picks = m_tool && m_tool->objectName() == QStringLiteral("pick") && !m_tool->isBusy();
    if (!picks || !m_layers.findings) return std::nullopt;
    return signAt(m_session.findings(), m_scale.toPanel(pixel), kSignReach / m_scale.perMm);
}

Hand PlanView::handAt(QPointF pixel, Qt::KeyboardModifiers modifiers) const {
    Hand hand;
    hand.at = m_scale.toPanel(pixel);
    hand.reach = kReachPixels / m_scale.perMm;
    hand.step = handStep(m_scale.perMm, m_session.project().units);
    hand.snap = !(modifiers & Qt::AltModifier);
    hand.adds = modifiers & Qt::ShiftModifier;
    return hand;
}

Hand PlanView::keyHand(Qt::KeyboardModifiers modifiers) const {
    return handAt(m_scale.toScreen(*m_keyPoint), modifiers);
}

void PlanView::setLayers(const PlanLayers& layers) {
    m_layers = layers;
    renewGround();
    Q_EMIT layersChanged();
}

void PlanView::mousePressEvent(QMouseEvent* event) {
    m_keyPoint.reset();
    if (beginPan(event)) return;
    if (event->button() != Qt::LeftButton || !m_tool) return;
    m_pointedAt.reset();
    m_pointedOut.clear();
    m_signFrom = event->position();
    m_draggedCut = m_tool->isBusy() ? std::nullopt : cutHandleAt(m_session, m_scale, event->position());
    if (!m_draggedCut) m_tool->press(handAt(event->position(), event->modifiers()));
}

void PlanView::mouseMoveEvent(QMouseEvent* event) {
    if (m_panFrom) return panTo(event->position());
    const Hand hand = handAt(event->position(), event->modifiers());
    if (m_draggedCut) return m_session.moveCut(draggedTo(m_session.project().panel, *m_draggedCut, hand));
    if (m_tool) m_tool->move(hand);
    update();
}

void PlanView::mouseReleaseEvent(QMouseEvent* event) {
    if (m_panFrom) return endPan();
    if (event->button() != Qt::LeftButton || !m_tool) return;
    // What lies under a sign can be dragged; a click that stays opens the finding as well.
    constexpr double kStill = 4;  // pixels
    const bool stayed = m_signFrom && (event->position() - *m_signFrom).manhattanLength() < kStill;
    const auto sign = stayed ? signUnder(*m_signFrom) : std::nullopt;
    m_signFrom.reset();
    if (!m_draggedCut) m_tool->release(handAt(event->position(), event->modifiers()));
    m_draggedCut.reset();
    if (sign) Q_EMIT findingClicked(*sign);
}

void PlanView::leaveEvent(QEvent*) {
    if (m_tool) m_tool->leave();
    update();
}

bool PlanView::event(QEvent* event) {
    // While a tool takes numbers, digits are no tools' keys.
    if (event->type() == QEvent::ShortcutOverride && m_tool && m_tool->takesNumbers()) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
        if (plain && !key->text().isEmpty() && key->text().at(0).isPrint()) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

void PlanView::keyPressEvent(QKeyEvent* event) {
    if (!m_tool) return QWidget::keyPressEvent(event);
    if (event->key() == Qt::Key_Escape) {
        m_keyPoint.reset();
        if (!m_tool->isBusy()) Q_EMIT escaped();
        return m_tool->cancel();
    }
    if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) {
        Q_EMIT deleteAsked();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        Q_EMIT fieldAsked();
        return;
    }
    if (panWithKeys(event) || pointWithKeys(event) || growWithKeys(event)) return;
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) return holdSpace(true);
    const QString text = event->text();
    if (m_tool->takesNumbers() && !text.isEmpty() && (text.at(0).isDigit() || QStringLiteral(".,-(").contains(text.at(0)))) {
        Q_EMIT typedOver(text);
        return;
    }
    QWidget::keyPressEvent(event);
}

/// Arrow keys move what is picked, else a pointer of their own; Space clicks with it.
bool PlanView::pointWithKeys(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && m_keyPoint) {
        const Hand hand = keyHand(event->modifiers());
        m_tool->press(hand);
        m_tool->release(hand);
        return true;
    }
    return moveKeyPoint(event);
}

bool PlanView::moveKeyPoint(QKeyEvent* event) {
    Point shift;
    switch (event->key()) {
        case Qt::Key_Left: shift = {-1, 0}; break;
        case Qt::Key_Right: shift = {1, 0}; break;
        case Qt::Key_Up: shift = {0, 1}; break;
        case Qt::Key_Down: shift = {0, -1}; break;
        default: return false;
    }
    const double steps = event->modifiers() & Qt::ShiftModifier ? kFarSteps : 1;
    shift = steps * handStep(m_scale.perMm, m_session.project().units) * shift;
    if (m_tool->takesArrows() && !m_keyPoint && m_tool->nudge(shift)) return true;
    const Panel& panel = m_session.project().panel;
    const Point from = m_keyPoint.value_or(Point{panel.width / 2, panel.height / 2});
    m_keyPoint = Point{std::clamp(from.x + shift.x, 0.0, panel.width), std::clamp(from.y + shift.y, 0.0, panel.height)};
    bringIntoView(*m_keyPoint);
    m_tool->move(keyHand(event->modifiers() & ~Qt::ShiftModifier));
    update();
    return true;
}

/// Plus and minus change the size of what the tool has picked.
bool PlanView::growWithKeys(QKeyEvent* event) {
    if (event->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) return false;
    const bool larger = event->key() == Qt::Key_Plus || event->key() == Qt::Key_Equal;
    if (!larger && event->key() != Qt::Key_Minus) return false;
    return m_tool->grow(larger ? 1 : -1);
}

/// Tab goes from thing to thing, or from one thing of the tool's to the next, and on to the next widget after the last.
bool PlanView::focusNextPrevChild(bool next) {
    if (m_tool && m_tool->entry().staysAmongFields) {
        Q_EMIT fieldAsked();
        return true;
    }
    if (const auto further = m_tool ? m_tool->tab(next) : std::nullopt) {
        m_keyPoint.reset();
        return *further || QWidget::focusNextPrevChild(next);
    }
    const std::vector<Picked> things = thingsOf(m_session.project(), m_session.solved());
    const auto here = std::ranges::find(things, m_selection.picked());
    const auto count = static_cast<std::ptrdiff_t>(things.size());
    const std::ptrdiff_t index = here == things.end() ? (next ? -1 : count) : here - things.begin();
    const std::ptrdiff_t wanted = next ? index + 1 : index - 1;
    if (wanted >= 0 && wanted < count) {
        m_selection.pick(things[static_cast<std::size_t>(wanted)]);
        return true;
    }
    m_selection.clear();
    return QWidget::focusNextPrevChild(next);
}

}  // namespace kerfwall
