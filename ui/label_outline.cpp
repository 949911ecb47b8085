// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/label_outline.h"

#include <algorithm>
#include <cmath>

#include "ui/painter.h"
#include "ui/paper_setting.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kBarRoom = 6.5;  // under the panel, for the bar and its text
constexpr double kTick = 0.8;
constexpr double kInch = 25.4;
constexpr double kBarShare = 0.6;  // of the panel's width, at most
const Lettering kBarText{2.4, false, Qt::black, Anchor::Middle};
const Lettering kName{2.2, false, Qt::black, Anchor::Middle};
const QColor kOpen(0xd8, 0xd8, 0xd8);

}  // namespace

double roundLength(double most) {
    const double power = std::pow(10, std::floor(std::log10(most) + 1e-9));
    for (const double times : {5.0, 2.0}) {
        if (times * power <= most * (1 + 1e-9)) return times * power;
    }
    return power;
}

LabelOutline labelOutline(const Project& project, const Solved& solved, const QRectF& frame) {
    const Panel& panel = project.panel;
    const double perMm = std::min(frame.width() / panel.width, (frame.height() - kBarRoom) / panel.height);
    const double width = panel.width * perMm;
    const double height = panel.height * perMm;
    LabelOutline outline;
    outline.panel = QRectF(frame.left() + (frame.width() - width) / 2, frame.top(), width, height);
    const View view{outline.panel.bottomLeft(), perMm, perMm, 1, 1, false};
    for (const SolvedCutout& cutout : solved.cutouts) {
        outline.openings.addPath(pathOf(cutout.opening.loops, view));
        if (solved.cutouts.size() > 1) outline.names.emplace_back(view.toDevice(0.5 * (cutout.opening.bounds.low + cutout.opening.bounds.high)), QString::fromStdString(cutout.id));
    }
    const double unit = project.units == Units::Inches ? kInch : 1;
    const double length = roundLength(kBarShare * panel.width / unit) * unit;
    const double y = outline.panel.bottom() + 2;
    const double middle = frame.center().x();
    outline.bar = QLineF(middle - length * perMm / 2, y, middle + length * perMm / 2, y);
    outline.barText = lengthWords(project, length);
    return outline;
}

void paintLabelOutline(QPainter& painter, const LabelOutline& outline) {
    painter.setPen(QPen(Qt::black, 0.35));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(outline.panel);
    painter.setPen(QPen(Qt::black, 0.25));
    painter.setBrush(kOpen);
    painter.drawPath(outline.openings);
    for (const auto& [at, name] : outline.names) {
        const double room = outline.panel.width() / 3;
        Lettering letters = kName;
        const double wide = widthOf(name, letters);
        if (wide > room) letters.height *= room / wide;
        writeText(painter, at + QPointF(0, 0.35 * letters.height), name, letters);
    }
    const QLineF& bar = outline.bar;
    painter.drawLine(bar);
    for (const QPointF& end : {bar.p1(), bar.p2()}) painter.drawLine(QLineF(end.x(), end.y() - kTick, end.x(), end.y() + kTick));
    const double middle = std::max(bar.center().x(), outline.panel.center().x());
    writeText(painter, {middle, bar.y1() + kTick + kBarText.height}, outline.barText, kBarText);
}

}  // namespace kerfwall
