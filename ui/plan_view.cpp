// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/plan_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "core/geometry/picking.h"
#include "ui/rulers.h"
#include "ui/selection.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

constexpr double kReachPixels = 8;     // how near the pointer catches a line, a mark, an edge
constexpr double kHandleReach = 9;     // the ends of the cutting line
constexpr double kHandleAway = 16;     // how far beyond the panel they stand
constexpr double kZoomStep = 1.25;
constexpr double kSmallestScale = 0.05;  // pixels for 1 mm
constexpr double kLargestScale = 200;
constexpr double kInch = 25.4;
constexpr int kFar = 10;  // Shift and an arrow key: that many steps

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
        update();
    });
    connect(&m_session, &Session::opened, this, [this] {
        m_pointedOut.clear();
        m_pointedAt.reset();
        fit();
    });
    connect(&m_selection, &Selection::changed, this, qOverload<>(&PlanView::update));
}

void PlanView::setTool(Tool* tool) {
    if (m_tool) disconnect(m_tool, nullptr, this, nullptr);
    m_tool = tool;
    connect(m_tool, &Tool::updated, this, qOverload<>(&PlanView::update));
    setCursor(m_tool->objectName() == QStringLiteral("pick") ? Qt::ArrowCursor : Qt::CrossCursor);
    update();
}

void PlanView::pointOut(const std::vector<LineId>& lines, std::optional<Point> at) {
    m_pointedOut = lines;
    m_pointedAt = at;
    update();
}

double PlanView::snapStep() const {
    const double perMm = m_scale.perMm;
    if (m_session.project().units == Units::Inches) {
        if (perMm >= 10) return kInch / 64;
        if (perMm >= 4) return kInch / 32;
        return perMm >= 0.8 ? kInch / 16 : kInch / 8;
    }
    if (perMm >= 25) return 0.1;
    if (perMm >= 8) return 0.5;
    return perMm >= 0.7 ? 1 : 5;
}

Hand PlanView::handAt(QPointF pixel, Qt::KeyboardModifiers modifiers) const {
    Hand hand;
    hand.at = m_scale.toPanel(pixel);
    hand.reach = kReachPixels / m_scale.perMm;
    hand.step = snapStep();
    hand.snap = !(modifiers & Qt::AltModifier);
    hand.adds = modifiers & Qt::ShiftModifier;
    return hand;
}

Hand PlanView::keyHand(Qt::KeyboardModifiers modifiers) const {
    return handAt(m_scale.toScreen(*m_keyPoint), modifiers);
}

void PlanView::setScale(const ViewScale& scale) {
    if (scale == m_scale) return;
    m_scale = scale;
    update();
    Q_EMIT scaleChanged();
}

void PlanView::fit() {
    m_fitted = true;
    const Panel& panel = m_session.project().panel;
    // Outside the panel stand edge marks and line letters, which keep their size.
    constexpr double kLettersAside = 56;
    constexpr double kLettersAbove = 78;  // and the heading
    const QRectF room = QRectF(rect()).adjusted(kRulerWidth + kLettersAside, kRulerHeight + kLettersAbove,
                                                -kLettersAside, -kLettersAside);
    if (room.width() < 20 || room.height() < 20) return;
    const double perMm = std::min(room.width() / panel.width, room.height() / panel.height);
    const double left = room.left() + (room.width() - perMm * panel.width) / 2;
    setScale({perMm, QPointF(left, room.top() + (room.height() + perMm * panel.height) / 2)});
}

void PlanView::zoom(double factor) { zoomAbout(factor, QRectF(rect()).center()); }

void PlanView::zoomAbout(double factor, QPointF pixel) {
    const Point kept = m_scale.toPanel(pixel);
    ViewScale scale = m_scale;
    scale.perMm = std::clamp(scale.perMm * factor, kSmallestScale, kLargestScale);
    scale.origin = QPointF(pixel.x() - kept.x * scale.perMm, pixel.y() + kept.y * scale.perMm);
    m_fitted = false;
    setScale(scale);
}

void PlanView::resizeEvent(QResizeEvent*) {
    if (m_fitted) fit();
}

bool PlanView::isOnCutHandle(QPointF pixel) const {
    const Panel& panel = m_session.project().panel;
    const QPointF left = m_scale.toScreen({0, m_session.cutHeight()}) - QPointF(kHandleAway, 0);
    const QPointF right = m_scale.toScreen({panel.width, m_session.cutHeight()}) + QPointF(kHandleAway, 0);
    const auto near = [&](QPointF handle) { return (pixel - handle).manhattanLength() < kHandleReach * 1.5; };
    return near(left) || near(right);
}

void PlanView::mousePressEvent(QMouseEvent* event) {
    m_keyPoint.reset();
    if (event->button() == Qt::MiddleButton) {
        m_panFrom = event->position();
        return;
    }
    if (event->button() != Qt::LeftButton || !m_tool) return;
    m_pointedAt.reset();
    m_pointedOut.clear();
    m_draggingCut = !m_tool->isBusy() && isOnCutHandle(event->position());
    if (!m_draggingCut) m_tool->press(handAt(event->position(), event->modifiers()));
}

void PlanView::mouseMoveEvent(QMouseEvent* event) {
    if (m_panFrom) {
        ViewScale scale = m_scale;
        scale.origin += event->position() - *m_panFrom;
        m_panFrom = event->position();
        m_fitted = false;
        return setScale(scale);
    }
    const Hand hand = handAt(event->position(), event->modifiers());
    if (m_draggingCut) return m_session.moveCut(hand.snap ? std::round(hand.at.y / hand.step) * hand.step : hand.at.y);
    if (m_tool) m_tool->move(hand);
    update();
}

void PlanView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::MiddleButton) return m_panFrom.reset();
    if (event->button() != Qt::LeftButton || !m_tool) return;
    if (!m_draggingCut) m_tool->release(handAt(event->position(), event->modifiers()));
    m_draggingCut = false;
}

void PlanView::leaveEvent(QEvent*) {
    if (m_tool) m_tool->leave();
    update();
}

void PlanView::wheelEvent(QWheelEvent* event) {
    const QPoint turned = event->angleDelta();
    if (event->modifiers() & Qt::ControlModifier) {
        zoomAbout(std::pow(kZoomStep, turned.y() / 120.0), event->position());
    } else {
        ViewScale scale = m_scale;
        const bool sideways = event->modifiers() & Qt::ShiftModifier;
        scale.origin += sideways ? QPointF(turned.y() / 2.0, 0) : QPointF(turned.x() / 2.0, turned.y() / 2.0);
        m_fitted = false;
        setScale(scale);
    }
    event->accept();
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
    if (pointWithKeys(event) || growWithKeys(event)) return;
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
    const double steps = event->modifiers() & Qt::ShiftModifier ? kFar : 1;
    shift = steps * snapStep() * shift;
    if (m_tool->takesArrows() && !m_keyPoint && m_tool->nudge(shift)) return true;
    const Panel& panel = m_session.project().panel;
    const Point from = m_keyPoint.value_or(Point{panel.width / 2, panel.height / 2});
    m_keyPoint = Point{std::clamp(from.x + shift.x, 0.0, panel.width), std::clamp(from.y + shift.y, 0.0, panel.height)};
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
