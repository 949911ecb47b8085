// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/cut_on_plan.h"

#include <QPainter>
#include <cmath>
#include <utility>

#include "core/drawing/section.h"
#include "ui/look.h"
#include "ui/session.h"

namespace kerfwall {
namespace {

// Pixels.
constexpr double kAway = 16;         // how far the cutting line runs beyond the panel
constexpr double kHandle = 14;       // length of its bold ends
constexpr double kHandleReach = 13;  // how near the pointer catches them
constexpr double kArrow = 11;

/// Where the cutting line ends on the screen.
std::pair<QPointF, QPointF> endsOf(const Session& session, const ViewScale& scale, const CuttingLine& cut) {
    const double length = cutLength(session.project().panel, cut.direction);
    const QPointF out = cut.direction == CutDirection::Level ? QPointF(kAway, 0) : QPointF(0, -kAway);
    return {scale.toScreen(onCut(cut, 0)) - out, scale.toScreen(onCut(cut, length)) + out};
}

void paintCut(QPainter& painter, const Session& session, const ViewScale& scale, const CuttingLine& cut) {
    const auto [first, last] = endsOf(session, scale, cut);
    const bool level = cut.direction == CutDirection::Level;
    QPen pen(colours().ink, 1);
    pen.setDashPattern({14, 4, 2, 4});
    painter.setPen(pen);
    painter.drawLine(first, last);
    const QPointF out = level ? QPointF(1, 0) : QPointF(0, -1);
    const QPointF looks = level ? QPointF(0, -1) : QPointF(-1, 0);  // the way one looks at the cut
    for (const auto& [end, outwards] : {std::pair{first, -out}, std::pair{last, out}}) {
        painter.setPen(QPen(colours().ink, 3, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(end - 8 * outwards, end + (kHandle - 8) * outwards);
        painter.setPen(Qt::NoPen);
        painter.setBrush(colours().ink);
        painter.drawPolygon(QPolygonF({end - 4 * out + 3 * looks, end + 4 * out + 3 * looks, end + kArrow * looks}));
    }
}

}  // namespace

void paintCuts(QPainter& painter, const Session& session, const ViewScale& scale) {
    for (const CutDirection direction : kCutDirections) {
        if (session.isCutShown(direction)) paintCut(painter, session, scale, session.cut(direction));
    }
}

void paintProjection(QPainter& painter, const Session& session, const ViewScale& scale, CutDirection to, QSize plan) {
    QColor thin = colours().faint;
    thin.setAlpha(140);
    painter.setPen(QPen(thin, 1, Qt::DotLine));
    const Panel& panel = session.project().panel;
    const QPointF foot = scale.toScreen({panel.width, 0});
    const auto draw = [&](double along) {
        const QPointF at = scale.toScreen({along, along});
        const double x = std::round(at.x()) + 0.5;
        const double y = std::round(at.y()) + 0.5;
        if (to == CutDirection::Level) painter.drawLine(QPointF(x, foot.y() + 4), QPointF(x, plan.height()));
        else painter.drawLine(QPointF(foot.x() + 4, y), QPointF(plan.width(), y));
    };
    for (const double along : projectedPlaces(session.project(), session.solved(), session.cut(to))) draw(along);
}

std::optional<CutDirection> cutHandleAt(const Session& session, const ViewScale& scale, QPointF pixel) {
    for (const CutDirection direction : kCutDirections) {
        if (!session.isCutShown(direction)) continue;
        const auto [first, last] = endsOf(session, scale, session.cut(direction));
        for (const QPointF end : {first, last}) {
            if ((pixel - end).manhattanLength() < kHandleReach) return direction;
        }
    }
    return std::nullopt;
}

}  // namespace kerfwall
