// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_views.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/plan_drawing.h"
#include "core/drawing/side_view.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kTitle = 4;        // height of a view's title
constexpr double kTitleRoom = 9;    // from its baseline's line to the drawing
constexpr double kRoomAside = 14;   // beside the panel, for ids and ticks
constexpr double kSideHeight = 14;  // of the panel in the side view
constexpr double kSideRoom = 26;    // the side view's texts and dimensions
constexpr double kFaint = 3.2;
constexpr double kMostExaggeration = 10;

/// Third-angle projection: the circles stand at the cone's small end.
/// Source    ISO 5456-2.
Drawing projectionSymbol() {
    Drawing symbol;
    const auto edge = [&](Point from, Point to) {
        symbol.marks.emplace_back(Stroke{Ink::LayoutLine, from, to, {}});
    };
    symbol.marks.emplace_back(Circle{Ink::LayoutLine, {3, 0}, 1.25, {}});
    symbol.marks.emplace_back(Circle{Ink::LayoutLine, {3, 0}, 2.5, {}});
    edge({7.5, -1.25}, {7.5, 1.25});
    edge({7.5, 1.25}, {12.5, 2.5});
    edge({12.5, 2.5}, {12.5, -2.5});
    edge({12.5, -2.5}, {7.5, -1.25});
    symbol.marks.emplace_back(Stroke{Ink::Centre, {-0.5, 0}, {14, 0}, {}});
    return symbol;
}

double exaggerationFor(double thickness, double perMm) {
    // perMm: paper mm for one mm of the panel.
    const double wanted = kSideHeight / (thickness * perMm);
    return std::clamp(std::round(wanted * 2) / 2, 1.0, kMostExaggeration);
}

QString shortNumber(double value) {
    return std::abs(value - std::round(value)) < 0.05 ? QString::number(std::round(value))
                                                      : QString::number(value, 'f', 1);
}

void addProjectionLines(TwoViews& views, const Project& project) {
    // Thin lines that join both views at the panel's ends, in the plan's own frame.
    const double gap = (views.sideView.origin.y() - views.planView.origin.y()) / views.planView.perMmY;
    for (const double x : {0.0, project.panel.width}) {
        const double mm = views.planView.paperMm / views.planView.perMmX;
        views.plan.marks.emplace_back(Stroke{Ink::Projection, {x, -7 * mm}, {x, -gap + 1.5 * mm}, {}});
    }
}

/// The projection lines stop at the titles.
void writeOnGround(QPainter& painter, QPointF at, const QString& text, const Lettering& lettering,
                   const Palette& palette) {
    const double width = widthOf(text, lettering);
    const double left = lettering.anchor == Anchor::Right ? at.x() - width : at.x();
    const double room = lettering.height * 0.3;
    painter.fillRect(
        QRectF(left - room, at.y() - lettering.height, width + 2 * room, lettering.height + 2 * room),
        palette.ground);
    writeText(painter, at, text, lettering);
}

}  // namespace

double cutHeight(const Project& project, const Solved& solved) {
    for (const SolvedCutout& cutout : solved.cutouts) {
        if (!cutout.opening.loops.empty() && cutout.widest > 0) return cutout.widestAt.y;
    }
    return project.panel.height / 2;
}

TwoViews twoViews(const Project& project, const Solved& solved, const std::vector<Finding>& findings,
                  const QRectF& frame, double unit) {
    TwoViews views;
    const Panel& panel = project.panel;
    const double below = (kRoomAside + kTitleRoom + kSideHeight + kSideRoom) * unit;
    const double above = (kTitleRoom + kRoomAside) * unit;
    const double perMm = std::min((frame.width() - 2 * kRoomAside * unit) / panel.width,
                                  (frame.height() - above - below) / panel.height);
    views.exaggeration = exaggerationFor(panel.thickness, perMm / unit);
    views.scale = unit / perMm;
    views.cutHeight = cutHeight(project, solved);

    PlanLayers layers;
    layers.markScale = unit / perMm;
    views.plan = planDrawing(project, solved, findings, layers);
    const double past = 6 * layers.markScale;
    for (const double x :
         {-past, panel.width + past / 3}) {  // its ends are enough: the middle is full of sizes
        views.plan.marks.emplace_back(
            Stroke{Ink::CuttingPlane, {x, views.cutHeight}, {x + 2 * past / 3, views.cutHeight}, {}});
    }
    views.side = sideView(project, solved, findings, {CutDirection::Level, views.cutHeight},
                          {.exaggeration = views.exaggeration, .markScale = layers.markScale});

    const double left = frame.left() + (frame.width() - panel.width * perMm) / 2;
    const double planFoot = frame.top() + above + panel.height * perMm;
    const double sideTop = planFoot + (kRoomAside + kTitleRoom) * unit;
    views.planView = View{{left, planFoot}, perMm, perMm, unit, 1, false};
    views.sideView = views.planView;
    views.sideView.origin.setY(sideTop);
    addProjectionLines(views, project);
    const double foot = sideTop - views.side.bounds.low.y * perMm + 2 * unit;
    views.frame = QRectF(frame.left(), frame.top(), frame.width(), foot - frame.top());
    return views;
}

void paintTwoViews(QPainter& painter, const TwoViews& views, const Palette& palette) {
    const double unit = views.planView.paperMm;
    paintDrawing(painter, views.plan, palette, views.planView);
    paintDrawing(painter, views.side, palette, views.sideView);
    const Lettering title{kTitle * unit, true, palette.text};
    const Lettering faint{kFaint * unit, false, palette.faint, Anchor::Right};
    const double left = views.frame.left();
    const double right = views.frame.right();
    const double top = views.frame.top() + kTitle * unit;
    writeText(painter, {left, top}, PaperWords::tr("Plan, layout face up"), title);
    const QString scale = views.scale >= 1 ? PaperWords::tr("scale 1 : %1").arg(shortNumber(views.scale))
                                           : PaperWords::tr("scale %1 : 1").arg(shortNumber(1 / views.scale));
    writeText(painter, {right - 17 * unit, top}, scale, faint);
    View symbolView{{right - 15 * unit, top - 1.4 * unit}, unit, unit, unit, 1, false};
    paintDrawing(painter, projectionSymbol(), palette, symbolView);
    const double sideTitle = views.sideView.origin.y() - 5 * unit;
    writeOnGround(painter, {left, sideTitle}, PaperWords::tr("Side view at the cutting line"), title,
                  palette);
    const QString heights =
        views.exaggeration == 1
            ? PaperWords::tr("heights true to scale")
            : PaperWords::tr("heights %1 times larger").arg(shortNumber(views.exaggeration));
    writeOnGround(painter, {right, sideTitle}, heights, faint, palette);
}

}  // namespace kerfwall
