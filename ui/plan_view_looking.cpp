// SPDX-License-Identifier: GPL-3.0-or-later
// How the plan view is looked at: zoomed, moved about, fitted. What else it hears stands in plan_view.cpp.
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScreen>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "core/drawing/side_view.h"
#include "ui/painter.h"
#include "ui/plan_view.h"
#include "ui/rulers.h"
#include "ui/screen_scale.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

constexpr double kZoomStep = 1.25;
constexpr double kSmallestScale = 0.05;  // pixels for 1 mm
constexpr double kLargestScale = 200;
constexpr double kNotch = 120;           // eighths of a degree, of a mouse wheel's notch
constexpr double kKeyPan = 60;           // pixels; Shift: five times that
// Pixels outside the panel, for edge marks and line letters, which keep their size.
constexpr double kLettersAside = 56;
constexpr double kLettersNarrow = 40;  // where the view is narrow
constexpr int kNarrow = 420;
constexpr double kLettersAbove = 48;
constexpr double kHeightsAside = 84;  // where the level side view tells heights in fractions beside the panel
constexpr double kMostWords = 0.3;    // of the view's height, for the upright side view's words below the panel
constexpr double kRoomRound = 24;     // round what is brought close up

}  // namespace

void PlanView::setScale(const ViewScale& scale) {
    if (scale == m_scale) return;
    m_scale = scale;
    renewGround();
    Q_EMIT scaleChanged();
}

QRectF PlanView::roomForPanel() const {
    const Project& project = m_session.project();
    const bool heights = m_session.isCutShown(CutDirection::Level) && !project.clampHoles.empty();
    const bool words = m_session.isCutShown(CutDirection::Upright);
    const double aside = width() < kNarrow                               ? kLettersNarrow
                         : heights && project.units == Units::Inches ? kHeightsAside
                                                                     : kLettersAside;
    const double below = words ? std::min(reachOfWords(project) * screenView({}, 1).paperMm, kMostWords * height()) : 0;
    const double above = kRulerHeight + headingHeight() + kLettersAbove;
    return QRectF(rect()).adjusted(kRulerWidth + aside, above, -aside, -std::max(below, kLettersAside));
}

void PlanView::fit() {
    m_fitted = true;
    const Panel& panel = m_session.project().panel;
    Box box{{0, 0}, {panel.width, panel.height}};
    if (!m_sheets.marks.empty()) {
        const auto& [low, high] = m_sheets.bounds;
        box = {{std::min(box.low.x, low.x), std::min(box.low.y, low.y)}, {std::max(box.high.x, high.x), std::max(box.high.y, high.y)}};
    }
    fitInto(roomForPanel(), box);
}

void PlanView::showClose(const Box& box) {
    m_fitted = false;
    fitInto(QRectF(rect()).adjusted(kRulerWidth + kRoomRound, kRulerHeight + headingHeight() + kRoomRound, -kRoomRound, -kRoomRound), box);
}

void PlanView::fitInto(const QRectF& room, const Box& box) {
    if (room.width() < 20 || room.height() < 20) return;
    const double width = std::max(box.high.x - box.low.x, 1e-3);
    const double height = std::max(box.high.y - box.low.y, 1e-3);
    const double perMm = std::clamp(std::min(room.width() / width, room.height() / height), kSmallestScale, kLargestScale);
    const QPointF middle(perMm * (box.low.x + box.high.x) / 2, -perMm * (box.low.y + box.high.y) / 2);
    setScale({perMm, room.center() - middle});
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

void PlanView::showLifeSize() { zoom(pixelsPerMm(*screen()) / m_scale.perMm); }

void PlanView::pan(QPointF by) {
    ViewScale scale = m_scale;
    scale.origin += by;
    m_fitted = false;
    setScale(scale);
}

void PlanView::bringIntoView(Point place) {
    constexpr double kRoom = 30;  // pixels
    const QRectF seen = QRectF(rect()).adjusted(kRulerWidth + kRoom, kRulerHeight + 2 * kRoom, -kRoom, -kRoom);
    const QPointF now = m_scale.toScreen(place);
    if (!seen.contains(now) && !seen.isEmpty()) pan(seen.center() - now);
}

void PlanView::resizeEvent(QResizeEvent*) {
    if (m_fitted) fit();
    renewGround();
}

/// Another look, other letters.
void PlanView::changeEvent(QEvent* event) {
    renewGround();
    QWidget::changeEvent(event);
}

/// The wheel alone moves the sheet as it moves any page, and two fingers move it as they move paper: nothing changes
/// its size by accident. With Ctrl it zooms about the pointer.
void PlanView::wheelEvent(QWheelEvent* event) {
    const QPoint turned = event->angleDelta();
    if (event->modifiers() & Qt::ControlModifier) {
        zoomAbout(std::pow(kZoomStep, turned.y() / kNotch), event->position());
    } else {
        const QPointF by = event->pixelDelta().isNull() ? QPointF(turned) / 2 : QPointF(event->pixelDelta());
        pan(event->modifiers() & Qt::ShiftModifier ? by.transposed() : by);
    }
    event->accept();
}

/// The middle button, or the left one while Space is held, takes hold of the sheet.
bool PlanView::beginPan(QMouseEvent* event) {
    const bool takes = event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && m_spaceHeld);
    if (!takes) return false;
    m_panFrom = event->position();
    dressPointer();
    return true;
}

void PlanView::panTo(QPointF pixel) {
    const QPointF by = pixel - *m_panFrom;
    m_panFrom = pixel;
    pan(by);
}

void PlanView::endPan() {
    m_panFrom.reset();
    dressPointer();
}

void PlanView::holdSpace(bool held) {
    m_spaceHeld = held;
    dressPointer();
}

void PlanView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) return holdSpace(false);
    QWidget::keyReleaseEvent(event);
}

void PlanView::focusOutEvent(QFocusEvent* event) {
    holdSpace(false);
    QWidget::focusOutEvent(event);
}

void PlanView::dressPointer() {
    const bool picks = m_tool && m_tool->objectName() == QStringLiteral("pick");
    setCursor(m_panFrom     ? Qt::ClosedHandCursor
              : m_spaceHeld ? Qt::OpenHandCursor
              : picks       ? Qt::ArrowCursor
                            : Qt::CrossCursor);
}

/// Ctrl and an arrow key look further that way: the sheet moves the other way.
bool PlanView::panWithKeys(QKeyEvent* event) {
    if (!(event->modifiers() & Qt::ControlModifier)) return false;
    const double by = event->modifiers() & Qt::ShiftModifier ? 5 * kKeyPan : kKeyPan;
    switch (event->key()) {
        case Qt::Key_Left: pan({by, 0}); return true;
        case Qt::Key_Right: pan({-by, 0}); return true;
        case Qt::Key_Up: pan({0, by}); return true;
        case Qt::Key_Down: pan({0, -by}); return true;
        default: return false;
    }
}

}  // namespace kerfwall
