// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_edges.h"

#include <algorithm>
#include <map>
#include <memory>

#include "core/drawing/edge_strips.h"
#include "core/says/paper_name.h"
#include "ui/painter.h"
#include "ui/paper_facts.h"
#include "ui/paper_pattern.h"
#include "ui/paper_setting.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kLetters = 2.6;
constexpr double kCaptionOver = 1.6;
constexpr double kBarUp = 3;  // from the page's usable foot
constexpr double kJoinRing = 1.5;
constexpr double kBarWords = 52;  // a bar's length and correction behind it
constexpr double kClipBeyond = 0.5;

struct Strips {
    StripPages laid;
    std::map<Edge, Drawing> drawings;
    Project project;
    Printing printing;
    QStringList unsure;
    Palette palette = paletteOf(PaletteKind::Paper);
};

QString nameOf(Edge edge) {
    switch (edge) {
        case Edge::Bottom:
            return PaperWords::tr("Bottom edge, from the left corner to the right");
        case Edge::Right:
            return PaperWords::tr("Right edge, from the bottom corner to the top");
        case Edge::Top:
            return PaperWords::tr("Top edge, from the right corner to the left");
        case Edge::Left:
            break;
    }
    return PaperWords::tr("Left edge, from the top corner to the bottom");
}

/// A ring on the edge's middle in the middle of what two pieces share.
void paintJoin(QPainter& painter, const View& view, double at, double middle, const QString& name, const QColor& colour) {
    Drawing ring;
    ring.marks.emplace_back(Circle{Ink::ReliefHole, {at, middle}, kJoinRing, {}});
    ring.marks.emplace_back(Stroke{Ink::Centre, {at, middle - 2 * kJoinRing}, {at, middle + 2 * kJoinRing}, {}});
    ring.marks.emplace_back(Stroke{Ink::Centre, {at - 2 * kJoinRing, middle}, {at + 2 * kJoinRing, middle}, {}});
    Palette palette = paletteOf(PaletteKind::Paper);
    palette.faint = colour;
    paintDrawing(painter, ring, palette, view);
    writeText(painter, view.toDevice({at, middle}) + QPointF(0, -2.4 * kJoinRing), name, {kLetters * 0.8, false, colour, Anchor::Middle});
}

void paintPiece(QPainter& painter, const Strips& strips, const StripPiece& piece) {
    const Drawing& drawing = strips.drawings.at(piece.edge);
    const double scaleX = strips.printing.scaleX;
    const double scaleY = strips.printing.scaleY;
    const double foot = strips.laid.height - piece.place.y;
    const View view = paperView({piece.place.x - piece.from * scaleX, foot}, scaleX, scaleY);
    const double high = drawing.bounds.high.y * scaleY;
    const double whole = drawing.bounds.high.x;
    const QRectF window(piece.place.x, foot - high, (piece.to - piece.from) * scaleX, high);
    painter.save();
    painter.setClipRect(window.adjusted(-kClipBeyond, -kClipBeyond, kClipBeyond, kClipBeyond));
    paintDrawing(painter, drawing, strips.palette, view);
    const double middle = drawing.bounds.high.y - kStripFlap / 2;
    const double share = strips.printing.overlap / 2;
    const Lettering faint{kLetters * 0.8, false, strips.palette.faint};
    const double words = window.left() + 2 + (piece.from > 0 ? strips.printing.overlap * scaleX : 0);
    writeText(painter, {words, window.top() + 3}, PaperWords::tr("layout face"), faint);
    writeText(painter, {words, window.bottom() - 1.5}, PaperWords::tr("back"), faint);
    const auto before = std::ranges::count_if(strips.laid.pieces, [&](const StripPiece& other) { return other.edge == piece.edge && other.from < piece.from; });
    const auto joint = [&](auto number) { return nameOf(piece.edge).left(1) + QString::number(number); };  // counted along the edge
    if (piece.from > 0) {
        paintJoin(painter, view, piece.from + share, middle, joint(before), strips.palette.ink);
        QPen seam(strips.palette.hatch, 0.18);  // up to here the piece before is laid over this one
        seam.setDashPattern({8, 6});
        painter.setPen(seam);
        const double x = view.toDevice({piece.from + strips.printing.overlap, 0}).x();
        painter.drawLine(QLineF(x, window.top(), x, window.bottom()));
    }
    if (piece.to < whole) paintJoin(painter, view, piece.to - share, middle, joint(before + 1), strips.palette.ink);
    painter.restore();
    QString caption = nameOf(piece.edge);
    if (piece.edge == strips.project.panel.referenceEdge) caption += PaperWords::tr(" \u00b7 reference edge");
    if (piece.from > 0 || piece.to < whole) {
        caption += PaperWords::tr(" \u00b7 from %1 to %2")
                       .arg(lengthWords(strips.project, piece.from), lengthWords(strips.project, piece.to));
    }
    caption += PaperWords::tr(" \u00b7 layout face up");
    writeText(painter, {window.left(), window.top() - kCaptionOver}, caption, {kLetters, false, strips.palette.ink});
}

void paintStripPage(QPainter& painter, const Strips& strips, std::size_t page) {
    const Lettering letters{kLetters, false, strips.palette.ink};
    for (const StripPiece& piece : strips.laid.pieces) {
        if (piece.page == page) paintPiece(painter, strips, piece);
    }
    const double margin = std::max(strips.printing.margin, kLeastMargin);
    QString foot = PaperWords::tr("%1 \u00b7 edge marks \u00b7 fold on the dashed lines, wrap over the edge \u00b7 full size, print without scaling")
                       .arg(titleOf(strips.project));
    if (strips.laid.pages > 1) foot += PaperWords::tr(" \u00b7 page %1 of %2").arg(page + 1).arg(strips.laid.pages);
    if (!strips.unsure.isEmpty()) foot = PaperWords::tr("Unsure: do not cut before it is settled. ") + strips.unsure.join(QLatin1Char(' '));
    const double y = strips.laid.height - margin - kBarUp;
    const double room = strips.laid.width - 2 * margin;
    writeText(painter, {margin, y}, shortened(foot, room, letters), letters);
    paintScaleBar(painter, {margin, y - kLetters - 2}, room - kBarWords, strips.project.units, strips.printing.scaleX);
}

}  // namespace

std::vector<PaperPage> edgeStripPages(const Project& project, const Solved& solved, const std::vector<Finding>& findings,
                                      const Paper& paper) {
    const auto strips = std::make_shared<Strips>();
    const bool cut = paper.name == "panel" || rollWidth(paper.name).has_value();
    const Paper sheet = cut ? *paperOf("a4", project.panel) : paper;
    strips->laid = stripPages(project, sheet.width, sheet.height);
    for (const Edge edge : kEdges) strips->drawings.emplace(edge, edgeStrip(project, solved, edge));
    strips->project = project;
    strips->printing = project.printing;
    strips->unsure = unsureSentences(findings);
    std::vector<PaperPage> pages;
    for (std::size_t i = 0; i < strips->laid.pages; ++i) {
        pages.push_back({strips->laid.width, strips->laid.height,
                         [strips, i](QPainter& painter) { paintStripPage(painter, *strips, i); }});
    }
    return pages;
}

}  // namespace kerfwall
