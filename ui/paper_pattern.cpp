// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_pattern.h"

#include <algorithm>
#include <cmath>
#include <memory>

#include "core/drawing/plan_drawing.h"
#include "ui/ink_style.h"
#include "ui/painter.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kClipBeyond = 0.5;  // past the sheet's window, so that a line on its border is whole
constexpr double kSmall = 2.4;
constexpr double kBarTick = 1.6;
constexpr double kBarStep = 10;
constexpr double kJoinMark = 2.2;
constexpr double kMapHeight = 12;
constexpr double kMapCell = 5;

/// What every sheet is painted from.
struct Pattern {
    Drawing drawing;
    Sheets sheets;
    Panel panel;
    Printing printing;
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
    return {pattern, sheet, paperView(origin, scaleX, scaleY),
            QRectF(sheet.corner.x, foot - high, wide, high), pattern.sheets.paper.name == "panel"};
}

QPen thinPen(const QColor& colour, double width) {
    QPen pen(colour, width);
    pen.setCapStyle(Qt::FlatCap);
    return pen;
}

/// The longest bar of whole 50 mm that fits, or the panel's longest whole 10 mm.
double barLength(double room) {
    const double fifties = std::floor(room / 50) * 50;
    return fifties > 0 ? fifties : std::floor(room / 10) * 10;
}

QString barText(double length, double correction) {
    const QString text = PaperWords::tr("%1 mm").arg(length);
    if (correction == 1) return text;
    return text + PaperWords::tr(" (corrected by %1)").arg(correction, 0, 'f', 4);
}

/// A ladder of 10 mm steps from `start` along `along`; the ticks point to `aside`.
void paintBar(QPainter& painter, QPointF start, QPointF along, QPointF aside, double length,
              double correction, const QColor& colour) {
    painter.setPen(thinPen(colour, kNarrowLine));
    painter.drawLine(QLineF(start, start + along * length * correction));
    for (double at = 0; at <= length + 1e-9; at += kBarStep) {
        const QPointF foot = start + along * at * correction;
        const bool end = at == 0 || at + kBarStep > length + 1e-9;
        painter.drawLine(QLineF(foot, foot + aside * (end ? 2 : 1) * kBarTick * 0.8));
    }
}

void paintBars(QPainter& painter, const PlacedSheet& at) {
    const QColor colour = at.pattern.palette.ink;
    const Printing& printing = at.pattern.printing;
    // In the margin between what may not print and the pattern; inside where there is no margin.
    const double inset = at.whole ? 12 : -3;
    const double x = at.window.left() + inset;
    const double y = at.window.bottom() - inset;
    const double room = at.whole ? 60 : 30;
    const double level = barLength((at.window.width() - room) / printing.scaleX);
    const double upright = barLength((at.window.height() - room) / printing.scaleY);
    const Lettering letters{kSmall, false, colour};
    const double in = at.whole ? 20 : 0;
    if (level > 0) {
        const QPointF start(at.window.left() + in, y);
        paintBar(painter, start, {1, 0}, {0, -1}, level, printing.scaleX, colour);
        writeText(painter, start + QPointF(level * printing.scaleX + 1.5, 0), barText(level, printing.scaleX),
                  letters);
    }
    if (upright > 0) {
        const QPointF start(x, at.window.bottom() - in);
        paintBar(painter, start, {0, -1}, {1, 0}, upright, printing.scaleY, colour);
        Lettering turned = letters;
        turned.turn = 90;
        writeText(painter, start + QPointF(1.8, -upright * printing.scaleY - 1.5),
                  barText(upright, printing.scaleY), turned);
    }
}

QString sheetName(const Sheet& sheet) {
    return QString(QChar(u'A' + sheet.row % 26)) + QString::number(sheet.column + 1);
}

void paintHead(QPainter& painter, const PlacedSheet& at, std::size_t number) {
    const Sheets& sheets = at.pattern.sheets;
    Lettering letters{kSmall, false, at.pattern.palette.ink};
    QString right = PaperWords::tr("full size, print without scaling");
    if (sheets.sheets.size() > 1) {
        right = PaperWords::tr("sheet %1, %2 of %3 \u00b7 %4")
                    .arg(sheetName(at.sheet))
                    .arg(number)
                    .arg(sheets.sheets.size())
                    .arg(right);
    }
    const double y = at.whole ? at.window.top() + 6 : at.window.top() - 1.2;
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

/// A cross in a ring at a place of the panel that both neighbours show.
void paintJoinMark(QPainter& painter, const PlacedSheet& at, Point place, const QString& name) {
    const QPointF centre = at.view.toDevice(place);
    const QColor colour = at.pattern.palette.ink;
    painter.setPen(thinPen(colour, 0.2));
    painter.setBrush(Qt::NoBrush);
    painter.drawLine(QLineF(centre - QPointF(kJoinMark, 0), centre + QPointF(kJoinMark, 0)));
    painter.drawLine(QLineF(centre - QPointF(0, kJoinMark), centre + QPointF(0, kJoinMark)));
    Drawing ring;
    ring.marks.emplace_back(Circle{Ink::ReliefHole, {0, 0}, kJoinMark * 0.55, {}});
    paintDrawing(painter, ring, at.pattern.palette, paperView(centre));
    writeText(painter, centre - QPointF(0, kJoinMark + 0.6), name,
              {kSmall * 0.85, false, colour, Anchor::Middle});
}

/// The neighbour's border as a dashed line, and two named marks in the middle of the overlap.
void paintJoint(QPainter& painter, const PlacedSheet& at, const Sheet& other) {
    const Box& a = at.sheet.window;
    const Box& b = other.window;
    const Box both{{std::max(a.low.x, b.low.x), std::max(a.low.y, b.low.y)},
                   {std::min(a.high.x, b.high.x), std::min(a.high.y, b.high.y)}};
    const bool beside = other.row == at.sheet.row;
    const bool first = beside ? at.sheet.column < other.column : at.sheet.row < other.row;
    const QString joint = first ? sheetName(at.sheet) + QLatin1Char('-') + sheetName(other)
                                : sheetName(other) + QLatin1Char('-') + sheetName(at.sheet);
    const Point middle{(both.low.x + both.high.x) / 2, (both.low.y + both.high.y) / 2};
    QPen pen = thinPen(at.pattern.palette.hatch, 0.18);
    pen.setDashPattern({8, 6});
    painter.setPen(pen);
    // Trim to the neighbour's border, or glue up to it: both sheets show the same line.
    if (beside) {
        const double x = first ? both.low.x : both.high.x;
        painter.drawLine(QLineF(at.view.toDevice({x, a.low.y}), at.view.toDevice({x, a.high.y})));
    } else {
        const double y = first ? both.high.y : both.low.y;
        painter.drawLine(QLineF(at.view.toDevice({a.low.x, y}), at.view.toDevice({a.high.x, y})));
    }
    for (const double share : {0.2, 0.8}) {
        const Point place = beside ? Point{middle.x, a.low.y + share * (a.high.y - a.low.y)}
                                   : Point{a.low.x + share * (a.high.x - a.low.x), middle.y};
        paintJoinMark(painter, at, place, joint);
    }
}

void paintJoints(QPainter& painter, const PlacedSheet& at) {
    for (const Sheet& other : at.pattern.sheets.sheets) {
        const int steps = std::abs(other.row - at.sheet.row) + std::abs(other.column - at.sheet.column);
        if (steps == 1 && at.pattern.printing.overlap > 0) paintJoint(painter, at, other);
    }
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

void paintSheet(QPainter& painter, const Pattern& pattern, std::size_t index) {
    const PlacedSheet at = placed(pattern, pattern.sheets.sheets[index]);
    painter.save();
    painter.setClipRect(at.window.adjusted(-kClipBeyond, -kClipBeyond, kClipBeyond, kClipBeyond));
    paintDrawing(painter, pattern.drawing, pattern.palette, at.view);
    paintJoints(painter, at);
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

Drawing patternDrawing(const Project& project, const Solved& solved) {
    PlanLayers layers;
    layers.fills = false;
    layers.idsInside = true;
    layers.findings = false;
    layers.workpiece = false;
    layers.dimensions = false;
    return planDrawing(project, solved, {}, layers);
}

std::vector<PaperPage> patternPages(const Project& project, const Solved& solved,
                                    const std::vector<Finding>& findings, const Paper& paper) {
    const auto pattern = std::make_shared<Pattern>();
    pattern->drawing = patternDrawing(project, solved);
    pattern->sheets = sheetsFor(project.panel, project.printing, paper);
    pattern->panel = project.panel;
    pattern->printing = project.printing;
    pattern->title = QString::fromStdString(project.title);
    pattern->unsure = unsureSentences(findings);
    const bool whole = paper.name == "panel";
    pattern->pageWidth = paper.width * (whole ? project.printing.scaleX : 1);
    pattern->pageHeight = paper.height * (whole ? project.printing.scaleY : 1);
    std::vector<PaperPage> pages;
    for (std::size_t i = 0; i < pattern->sheets.sheets.size(); ++i) {
        pages.push_back({pattern->pageWidth, pattern->pageHeight,
                         [pattern, i](QPainter& painter) { paintSheet(painter, *pattern, i); }});
    }
    return pages;
}

}  // namespace kerfwall
