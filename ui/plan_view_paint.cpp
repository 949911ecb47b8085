// SPDX-License-Identifier: GPL-3.0-or-later
// What the plan view shows; what it hears stands in plan_view.cpp.
#include <QPainter>
#include <QPainterPath>
#include <QScreen>
#include <cmath>

#include "core/geometry/edge_place.h"
#include "core/geometry/picking.h"
#include "ui/cut_on_plan.h"
#include "ui/hand_marks.h"
#include "ui/look.h"
#include "ui/screen_painting.h"
#include "ui/screen_scale.h"
#include "ui/plan_view.h"
#include "ui/rulers.h"
#include "ui/selection.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

constexpr int kHeading = 30;      // pixels over the level ruler, or more for large letters

QPolygonF polygonOf(const ViewScale& scale, const std::vector<Point>& face) {
    QPolygonF polygon;
    for (const Point corner : face) polygon << scale.toScreen(corner);
    return polygon;
}

/// `ratio`: millimetres of the panel for one on the screen.
QString scaleText(double ratio) {
    if (std::abs(ratio - 1) < 1e-6) return PlanView::tr("life size");
    return ratio >= 1 ? PlanView::tr("scale 1 : %1").arg(ratio, 0, 'f', 1) : PlanView::tr("scale %1 : 1").arg(1 / ratio, 0, 'f', 1);
}

QColor seeThrough(QColor colour, int alpha) {
    colour.setAlpha(alpha);
    return colour;
}

}  // namespace

void PlanView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (keepsGround()) painter.drawPixmap(0, 0, m_ground);
    else paintGround(painter);
    painter.setRenderHint(QPainter::Antialiasing);
    paintOnScreen(painter, m_sheets, m_scale);
    paintPicked(painter);
    paintHand(painter, m_foreseen);
    if (m_tool) paintHand(painter, m_tool->inHand());
    paintKeyPoint(painter);
    paintBase(painter);
    painter.setRenderHint(QPainter::Antialiasing, false);
    paintHeading(painter);
    if (hasFocus()) paintFocus(painter, rect());
}

void PlanView::renewGround() {
    m_ground = {};
    m_groundWasPainted = false;
    update();
}

/// While only the hand moves, the ground is the same from frame to frame: it is kept once it is wanted a second time (40
/// lines under a hovering hand: 0.1 ms in place of 3.4). While it changes with each frame nothing is kept.
bool PlanView::keepsGround() {
    const double ratio = devicePixelRatioF();
    if (!m_ground.isNull() && m_ground.devicePixelRatio() == ratio) return true;
    if (!m_groundWasPainted) {
        m_groundWasPainted = true;
        return false;
    }
    m_ground = QPixmap(size() * ratio);
    m_ground.setDevicePixelRatio(ratio);
    QPainter painter(&m_ground);
    paintGround(painter);
    return true;
}

void PlanView::paintGround(QPainter& painter) const {
    painter.fillRect(rect(), colours().desk);
    for (const CutDirection direction : kCutDirections) {
        if (m_session.isCutShown(direction)) paintProjection(painter, m_session, m_scale, direction, size());
    }
    painter.setRenderHint(QPainter::Antialiasing);
    PlanLayers layers = m_layers;
    layers.markScale = m_scale.markScale();
    layers.strays = true;
    const Drawing drawing = planDrawing(m_session.project(), m_session.solved(), m_session.findings(), layers);
    paintOnScreen(painter, drawing, m_scale);
    paintCuts(painter, m_session, m_scale);
}

/// Where the keyboard's pointer stands, else the mouse's; none: it is elsewhere.
std::optional<QPointF> PlanView::pointer() const {
    if (m_keyPoint) return m_scale.toScreen(*m_keyPoint);
    return underMouse() ? std::optional(QPointF(mapFromGlobal(QCursor::pos()))) : std::nullopt;
}

int PlanView::headingHeight() const { return std::max(kHeading, fontMetrics().height() + 14); }

void PlanView::paintHeading(QPainter& painter) const {
    const Panel& panel = m_session.project().panel;
    painter.fillRect(QRect(0, 0, width(), headingHeight()), colours().desk);
    paintRulers(painter, rect().adjusted(0, headingHeight(), 0, 0), m_scale, m_session.project().units,
                pointer().value_or(QPointF(-1, -1)));
    QFont bold = font();
    bold.setBold(true);
    QString title = tr("Plan, layout face up");
    if (QFontMetricsF(bold).horizontalAdvance(title) > width() - kRulerWidth - 8) title = tr("Plan");
    const QString scale = scaleText(pixelsPerMm(*screen()) / m_scale.perMm);
    const double titleWidth = QFontMetricsF(bold).horizontalAdvance(title);
    const double scaleWidth = QFontMetricsF(font()).horizontalAdvance(scale);
    const double baseline = 6 + painter.fontMetrics().ascent();
    constexpr double kAside = 4, kBetween = 18;
    // Over the panel's ends, but never out of view.
    const double least = kRulerWidth + kAside;
    const double left = std::max(least, std::min(m_scale.toScreen({0, 0}).x(), width() - titleWidth - kAside));
    const double right = std::min<double>(width() - 16, m_scale.toScreen({panel.width, 0}).x());
    painter.setFont(bold);
    painter.setPen(colours().ink);
    painter.drawText(QPointF(left, baseline), title);
    const double scaleAt = std::max(left + titleWidth + kBetween, right - scaleWidth);
    if (scaleAt + scaleWidth > width()) return;
    painter.setFont(font());
    painter.setPen(colours().faint);
    painter.drawText(QPointF(scaleAt, baseline), scale);
}

void PlanView::paintPicked(QPainter& painter) const {
    const Project& project = m_session.project();
    painter.setBrush(Qt::NoBrush);
    const auto bold = [&](const LineId& id, const QColor& colour) {
        const auto line = runOf(m_session.solved(), id);
        if (!line) return;
        painter.setPen(QPen(colour, 2.5));
        painter.drawLine(m_scale.toScreen(line->first), m_scale.toScreen(line->second));
    };
    for (const LineId& id : m_pointedOut) bold(id, drawingColours().work);
    const Picked& picked = m_selection.picked();
    for (const LineId& id : picked.lines) {
        bold(id, drawingColours().tool);
        const SolvedLine* line = findLine(m_session.solved(), id);
        if (!line) continue;
        painter.setPen(Qt::NoPen);
        painter.setBrush(drawingColours().tool);
        for (const Point end : {line->from, line->to}) painter.drawEllipse(m_scale.toScreen(end), 4.5, 4.5);
    }
    painter.setBrush(Qt::NoBrush);
    for (const std::size_t hole : picked.holes) {
        if (hole >= project.clampHoles.size()) continue;
        const ClampHole& of = project.clampHoles[hole];
        painter.setPen(QPen(drawingColours().tool, 2));
        painter.drawEllipse(m_scale.toScreen(markPlace(project.panel, {of.edge, of.at})), 7, 7);
    }
    painter.setPen(QPen(drawingColours().tool, 1.5, Qt::DashLine));
    const Picked areas = without(picked, {picked.lines, {}, picked.holes, {}, false});
    for (const auto& outline : outlinesOf(project, m_session.solved(), areas)) painter.drawPolygon(polygonOf(m_scale, outline));
    if (m_pointedAt) {
        painter.setPen(QPen(drawingColours().work, 2));
        painter.drawEllipse(m_scale.toScreen(*m_pointedAt), 16, 16);
    }
}

void PlanView::paintHand(QPainter& painter, const InHand& shown) const {
    painter.setPen(QPen(drawingColours().tool, 1.5));
    painter.setBrush(seeThrough(drawingColours().tool, 50));
    for (const auto& face : shown.faces) painter.drawPolygon(polygonOf(m_scale, face));
    painter.setPen(QPen(drawingColours().tool, 2));
    for (const auto& [from, to] : shown.lines) painter.drawLine(m_scale.toScreen(from), m_scale.toScreen(to));
    painter.setBrush(Qt::NoBrush);
    for (const OutlineLoop& run : shown.runs) painter.drawPath(runPath(run, screenView(m_scale.origin, m_scale.perMm)));
    painter.setPen(QPen(drawingColours().tool, 2, Qt::DashLine));
    for (const OutlineLoop& run : shown.wished) painter.drawPath(runPath(run, screenView(m_scale.origin, m_scale.perMm)));
    painter.setBrush(drawingColours().tool);
    painter.setPen(Qt::NoPen);
    for (const Point spot : shown.spots) painter.drawEllipse(m_scale.toScreen(spot), 4.5, 4.5);
    paintHolds(painter, m_scale, shown);
    if (shown.noteAt && !shown.note.isEmpty()) paintNote(painter, *shown.noteAt, shown.note);
}

void PlanView::paintNote(QPainter& painter, Point at, const QString& note) const {
    const QRectF text = painter.fontMetrics().boundingRect(QRect(0, 0, 400, 200), Qt::AlignLeft | Qt::AlignTop, note);
    QRectF box(m_scale.toScreen(at) + QPointF(16, -text.height() - 26), text.size() + QSizeF(18, 10));
    // Kept on the sheet.
    if (box.right() > width() - 6) box.moveRight(m_scale.toScreen(at).x() - 16);
    box.moveLeft(std::max(box.left(), kRulerWidth + 4.0));
    box.moveTop(std::max(box.top(), headingHeight() + kRulerHeight + 4.0));
    painter.setPen(QPen(drawingColours().tool, 1));
    painter.setBrush(colours().column);
    painter.drawRoundedRect(box, 3, 3);
    painter.setPen(colours().ink);
    painter.drawText(box.adjusted(9, 5, -9, -5), Qt::AlignLeft | Qt::AlignTop, note);
}

void PlanView::setBaseShown(bool shown) {
    m_baseShown = shown;
    update();
}

void PlanView::paintBase(QPainter& painter) const {
    const auto base = benchOf(m_session.project()).base;
    const auto at = pointer();
    if (!m_baseShown || !base || !at) return;
    const double radius = *base / 2 * m_scale.perMm;
    painter.setPen(QPen(drawingColours().tool, 1.5, Qt::DashLine));
    painter.setBrush(seeThrough(drawingColours().tool, 24));
    painter.drawEllipse(*at, radius, radius);
}

void PlanView::paintKeyPoint(QPainter& painter) const {
    if (!m_keyPoint) return;
    const QPointF at = m_scale.toScreen(*m_keyPoint);
    painter.setPen(QPen(drawingColours().tool, 1.5));
    painter.drawLine(at - QPointF(11, 0), at + QPointF(11, 0));
    painter.drawLine(at - QPointF(0, 11), at + QPointF(0, 11));
}

}  // namespace kerfwall
