// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/paper_facts.h"
#include "ui/paper_pattern.h"
#include "ui/paper_text.h"
#include "ui/paper_views.h"

namespace kerfwall {
namespace {

constexpr double kPaperWidth = 260;  // the picture as if that many mm wide: text sizes follow
constexpr double kEdge = 8;
constexpr double kHighest = 320;

}  // namespace

QImage pictureOf(const Project& project, const Solved& solved, const std::vector<Finding>& findings,
                 int width) {
    const double unit = width / kPaperWidth;
    const Palette palette = paletteOf(PaletteKind::Light);
    const Lettering title{6, true, palette.text};
    const Lettering facts{3.6, false, palette.faint};
    const QStringList unsure = unsureSentences(findings);
    const double head = kEdge + 22 + (unsure.isEmpty() ? 0 : 12);
    const QRectF frame(kEdge, head, kPaperWidth - 2 * kEdge, kHighest);
    const TwoViews views = twoViews(project, solved, findings, frame, 1);
    const int height = static_cast<int>(std::ceil((views.frame.bottom() + kEdge) * unit));
    QImage image(width, height, QImage::Format_RGB32);
    constexpr double kMetre = 1000;  // mm
    image.setDotsPerMeterX(qRound(unit * kMetre));
    image.setDotsPerMeterY(qRound(unit * kMetre));
    image.fill(palette.ground);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(unit, unit);
    const double room = kPaperWidth - 2 * kEdge;
    writeText(painter, {kEdge, kEdge + 5}, shortened(titleOf(project), room, title), title);
    double line = kEdge + 11.5;
    for (const QString& fact : projectFacts(project, solved)) {
        writeText(painter, {kEdge, line}, shortened(fact, room, facts), facts);
        line += facts.height * kLineStep;
    }
    if (!unsure.isEmpty()) {
        const Lettering large{8, true, palette.stop};
        writeText(painter, {kEdge, kEdge + 27},
                  shortened(PaperWords::tr("Unsure: do not cut before it is settled"), room, large), large);
    }
    paintTwoViews(painter, views, palette);
    painter.end();
    return image;
}

}  // namespace kerfwall
