// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_pattern.h"

#include <algorithm>
#include <cmath>
#include <memory>

#include "ui/ink_style.h"
#include "ui/painter.h"
#include "ui/paper_joint.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kClipBeyond = 0.5;  // past the sheet's window, so that a line on its border is whole
constexpr double kSmall = 2.4;
constexpr double kBarTick = 1.6;
constexpr double kHairline = 0.13;  // narrow, to saw to
constexpr double kBarRoom = 30;     // a bar leaves beside it for its text
constexpr double kWholeBarRoom = 60;
constexpr double kWholeBarIn = 20;
constexpr double kInch = 25.4;
constexpr double kOverJoint = 4;   // the diagonal's words stand over what two sheets share
constexpr double kStub = 12;       // of the diagonal at its two ends
constexpr double kSeenBeyond = 3;  // a mark's width and signs may reach into the window from this far outside
constexpr double kMapHeight = 12;
constexpr double kMapCell = 5;

/// What every sheet is painted from.
struct Pattern {
    Drawing drawing;
    std::vector<Box> bounds;  // of the drawing's marks
    std::vector<Stretch> stretches;
    Sheets sheets;
    Panel panel;
    Printing printing;
    Units units = Units::Millimetres;
    QString title;
    QStringList unsure;
    double pageWidth = 0;
    double pageHeight = 0;
    Palette palette = paletteOf(PaletteKind::Paper);
};

/// A sheet with its place on the paper worked out.
struct PlacedSheet {
    const Pattern& pattern;
    const Sheet& sheet;
    View view;
    QRectF window;       // on the page, mm
    bool whole = false;  // one sheet as large as the panel: texts go inside
};

PlacedSheet placed(const Pattern& pattern, const Sheet& sheet) {
    const double scaleX = pattern.printing.scaleX;
    const double scaleY = pattern.printing.scaleY;
    const double foot = pattern.pageHeight - sheet.corner.y;
    const QPointF origin(sheet.corner.x - sheet.window.low.x * scaleX, foot + sheet.window.low.y * scaleY);
    const double wide = (sheet.window.high.x - sheet.window.low.x) * scaleX;
    const double high = (sheet.window.high.y - sheet.window.low.y) * scaleY;
    View view = paperView(origin, scaleX, scaleY);
    if (pattern.printing.hairline) view.lineScale = kHairline / kNarrowLine;
    return {pattern, sheet, view,
            QRectF(sheet.corner.x, foot - high, wide, high), pattern.sheets.paper.name == "panel"};
}

/// How far what stands in the margin must move in, for a margin too narrow to hold it and the strip no printer prints in.
double moveIn(const PlacedSheet& at, double needed) {
    return std::max(0.0, needed + kLeastMargin - at.sheet.corner.x);
}

QString barText(double length, Units units, double correction) {
    const QString text = units == Units::Inches ? PaperWords::tr("%1 in").arg(std::round(length / kInch))
                                                : PaperWords::tr("%1 mm").arg(length);
    if (correction == 1) return text;
    return text + PaperWords::tr(" (corrected by %1)").arg(correction, 0, 'f', 4);
}

/// A ladder of whole 10 mm or inches from `start` along `along`; the ticks point to `aside`.
void paintBar(QPainter& painter, QPointF start, QPointF along, QPointF aside, double length, Units units, double correction,
              const QColor& colour) {
    painter.setPen(thinPen(colour, kNarrowLine));
    painter.drawLine(QLineF(start, start + along * length * correction));
    const double step = units == Units::Inches ? kInch : 10;
    for (double at = 0; at <= length + 1e-9; at += step) {
        const QPointF foot = start + along * at * correction;
        const bool end = at == 0 || at + step > length + 1e-9;
        painter.drawLine(QLineF(foot, foot + aside * (end ? 2 : 1) * kBarTick * 0.8));
    }
}

/// From the bars' common end to the place over their far ends: a skewed print shows there and on neither bar.
void paintDiagonal(QPainter& painter, QPointF start, const ScaleBars& bars, const PlacedSheet& at, const Lettering& letters) {
    const Printing& printing = at.pattern.printing;
    const QPointF end = start + QPointF(bars.level * printing.scaleX, -bars.upright * printing.scaleY);
    const QLineF whole(start, end);
    if (whole.length() < 4 * kStub) return;
    const QPointF stub = (end - start) * (kStub / whole.length());
    painter.setPen(thinPen(letters.colour, 0.2));
    for (const QPointF place : {start, end}) paintJoinCross(painter, place);
    painter.drawLine(QLineF(start, start + stub));
    painter.drawLine(QLineF(end - stub, end));
    const QString size = at.pattern.units == Units::Inches ? PaperWords::tr("%1 in").arg(bars.diagonal / kInch, 0, 'f', 3)
                                                           : PaperWords::tr("%1 mm").arg(bars.diagonal, 0, 'f', 1);
    writeText(painter, start + stub + QPointF(1, -kOverJoint), PaperWords::tr("diagonal from cross to cross %1").arg(size), letters);
}

void paintBars(QPainter& painter, const PlacedSheet& at) {
    const QColor colour = at.pattern.palette.ink;
    const Printing& printing = at.pattern.printing;
    const ScaleBars bars = scaleBarsOf(at.pattern.sheets, printing, at.pattern.units);
    // In the margin between what may not print and the pattern; inside where there is no margin.
    const double inset = at.whole ? 12 : -3 + moveIn(at, 3);
    const double in = at.whole ? kWholeBarIn : 0;
    const QPointF corner(at.window.left() + in, at.window.bottom() - in);
    const Lettering letters{kSmall, false, colour};
    if (bars.level > 0) {
        const QPointF start(corner.x(), at.window.bottom() - inset);
        paintBar(painter, start, {1, 0}, {0, -1}, bars.level, at.pattern.units, printing.scaleX, colour);
        writeText(painter, start + QPointF(bars.level * printing.scaleX + 1.5, 0),
                  barText(bars.level, at.pattern.units, printing.scaleX), letters);
    }
    if (bars.upright > 0) {
        const QPointF start(at.window.left() + inset, corner.y());
        paintBar(painter, start, {0, -1}, {1, 0}, bars.upright, at.pattern.units, printing.scaleY, colour);
        Lettering turned = letters;
        turned.turn = 90;
        writeText(painter, start + QPointF(1.8, -bars.upright * printing.scaleY - 1.5),
                  barText(bars.upright, at.pattern.units, printing.scaleY), turned);
    }
    if (bars.level > 0 && bars.upright > 0) paintDiagonal(painter, corner, bars, at, letters);
}

void paintHead(QPainter& painter, const PlacedSheet& at, std::size_t number) {
    const Sheets& sheets = at.pattern.sheets;
    Lettering letters{kSmall, false, at.pattern.palette.ink};
    QString right = PaperWords::tr("full size, print without scaling");
    right = (at.pattern.printing.face == Face::Back ? PaperWords::tr("back, mirrored \u00b7 %1") : PaperWords::tr("layout face \u00b7 %1")).arg(right);
    if (sheets.sheets.size() > 1) {
        right = PaperWords::tr("sheet %1, %2 of %3 \u00b7 %4")
                    .arg(sheetName(at.sheet))
                    .arg(number)
                    .arg(sheets.sheets.size())
                    .arg(right);
    }
    const double y = at.whole ? at.window.top() + 6 : at.window.top() - 1.2 + moveIn(at, 3.65);
    const double inset = at.whole ? 8 : 0;
    const double room = at.window.width() - 2 * inset - widthOf(right, letters) - 4;
    Lettering bold = letters;
    bold.bold = true;
    if (room > 10) {
        writeText(painter, {at.window.left() + inset, y}, shortened(at.pattern.title, room, bold), bold);
    }
    letters.anchor = Anchor::Right;
    writeText(painter, {at.window.right() - inset, y}, right, letters);
}

void addUnsureLines(Drawing& drawing, const QStringList& sentences, Point middle, double width) {
    if (sentences.isEmpty()) return;
    const auto add = [&](const QString& text, Lettering letters) {
        letters.height = std::min(letters.height, width / 6);
        for (const QString& line : brokenLines(text, width, letters)) {
            drawing.marks.emplace_back(Label{Ink::FindingStop, middle, line.toStdString(), letters.height,
                                             Anchor::Middle, 0, "unsure"});
            middle.y -= letters.height * kLineStep;
        }
    };
    add(PaperWords::tr("Unsure: do not cut before it is settled"), {9});
    add(sentences.join(QLatin1Char(' ')), {4});
}

/// How the sheets lie, this one filled.
void paintKeyMap(QPainter& painter, const PlacedSheet& at) {
    const Sheets& sheets = at.pattern.sheets;
    if (sheets.sheets.size() < 2) return;
    const double high = std::min(kMapCell, kMapHeight / sheets.rows);
    const double wide = high * sheets.paper.width / sheets.paper.height;
    const double left = at.window.right() - 3 - wide * sheets.columns;
    const double top = at.window.top() + 3;
    painter.setPen(thinPen(at.pattern.palette.faint, 0.15));
    painter.fillRect(QRectF(left - 1, top - 1, wide * sheets.columns + 2, high * sheets.rows + 2), Qt::white);
    for (const Sheet& sheet : sheets.sheets) {
        const bool here = sheet.row == at.sheet.row && sheet.column == at.sheet.column;
        painter.setBrush(here ? QBrush(at.pattern.palette.faint) : QBrush(Qt::NoBrush));
        painter.drawRect(QRectF(left + sheet.column * wide, top + sheet.row * high, wide, high));
    }
}

void paintUnsure(QPainter& painter, const PlacedSheet& at) {
    // On every sheet by itself: a warning across the whole panel would be cut up by the tiles.
    Drawing drawing;
    addUnsureLines(drawing, at.pattern.unsure, {at.window.width() / 2, at.window.height() / 2},
                   at.window.width() - 16);
    paintDrawing(painter, drawing, at.pattern.palette, paperView(at.window.bottomLeft()));
}

/// What of the pattern can be seen on a sheet.
Drawing seenOn(const Pattern& pattern, const Box& window) {
    Drawing seen;
    seen.bounds = window;
    for (std::size_t i = 0; i < pattern.bounds.size(); ++i) {
        const Box& box = pattern.bounds[i];
        const bool apart = box.low.x > window.high.x + kSeenBeyond || box.high.x < window.low.x - kSeenBeyond ||
                           box.low.y > window.high.y + kSeenBeyond || box.high.y < window.low.y - kSeenBeyond;
        if (!apart) seen.marks.push_back(pattern.drawing.marks[i]);
    }
    return seen;
}

void paintSheet(QPainter& painter, const Pattern& pattern, std::size_t index) {
    const PlacedSheet at = placed(pattern, pattern.sheets.sheets[index]);
    painter.save();
    painter.setClipRect(at.window.adjusted(-kClipBeyond, -kClipBeyond, kClipBeyond, kClipBeyond));
    paintDrawing(painter, seenOn(pattern, at.sheet.window), pattern.palette, at.view);
    paintJoints(painter, {pattern.sheets, at.sheet, pattern.stretches, at.view, pattern.palette});
    paintKeyMap(painter, at);
    paintUnsure(painter, at);
    painter.restore();
    paintHead(painter, at, index + 1);
    paintBars(painter, at);
}

}  // namespace

QStringList unsureSentences(const std::vector<Finding>& findings) {
    QStringList sentences;
    for (const Finding& finding : findings) {
        if (finding.code == "unsure") sentences.append(QString::fromStdString(finding.text));
    }
    return sentences;
}

void addUnsure(Drawing& drawing, const Panel& panel, const std::vector<Finding>& findings) {
    addUnsureLines(drawing, unsureSentences(findings), {panel.width / 2, panel.height / 2},
                   0.9 * panel.width);
}

void paintScaleBar(QPainter& painter, QPointF start, double room, Units units, double correction) {
    const Palette palette = paletteOf(PaletteKind::Paper);
    const double length = barLength(room / correction, units);
    if (length <= 0) return;
    paintBar(painter, start, {1, 0}, {0, -1}, length, units, correction, palette.ink);
    writeText(painter, start + QPointF(length * correction + 1.5, 0), barText(length, units, correction),
              {kSmall, false, palette.ink});
}

double barLength(double room, Units units) {
    const double least = units == Units::Inches ? kInch : 10;
    const double step = units == Units::Inches ? 2 * kInch : 50;
    const double large = std::floor(room / step + 1e-9) * step;
    return large > 0 ? large : std::max(0.0, std::floor(room / least + 1e-9) * least);
}

ScaleBars scaleBarsOf(const Sheets& sheets, const Printing& printing, Units units) {
    if (sheets.sheets.empty()) return {};
    const Box& window = sheets.sheets.front().window;  // all are of one size
    const double room = sheets.paper.name == "panel" ? kWholeBarRoom : kBarRoom;
    ScaleBars bars;
    bars.level = barLength(window.high.x - window.low.x - room / printing.scaleX, units);
    bars.upright = barLength(window.high.y - window.low.y - room / printing.scaleY, units);
    bars.diagonal = std::hypot(bars.level, bars.upright);
    return bars;
}

std::vector<PaperPage> patternPages(const Project& project, const Solved& solved,
                                    const std::vector<Finding>& findings, const Paper& paper) {
    const auto pattern = std::make_shared<Pattern>();
    pattern->drawing = patternDrawing(project, solved);
    pattern->stretches = stretchesOf(pattern->drawing);
    for (const Mark& mark : pattern->drawing.marks) pattern->bounds.push_back(boundsOf(mark));
    pattern->sheets = sheetsFor(project.panel, project.printing, paper, stretchesOf(pattern->drawing));
    pattern->panel = project.panel;
    pattern->printing = project.printing;
    pattern->units = project.units;
    pattern->title = QString::fromStdString(project.title);
    pattern->unsure = unsureSentences(findings);
    const bool whole = paper.name == "panel";
    const Paper& lies = pattern->sheets.paper;
    pattern->pageWidth = lies.width * (whole ? project.printing.scaleX : 1);
    pattern->pageHeight = lies.height * (whole ? project.printing.scaleY : 1);
    std::vector<PaperPage> pages;
    for (std::size_t i = 0; i < pattern->sheets.sheets.size(); ++i) {
        pages.push_back({pattern->pageWidth, pattern->pageHeight,
                         [pattern, i](QPainter& painter) { paintSheet(painter, *pattern, i); }});
    }
    return pages;
}

}  // namespace kerfwall
