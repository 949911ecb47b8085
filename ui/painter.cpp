// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/painter.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "ui/lettering.h"
#include "ui/surface.h"

namespace kerfwall {
namespace {

constexpr double kPixelsPerMm = 96 / 25.4;  // 1 in = 96 px, W3C CSS Values 3
// A cubic over 30 degrees strays 0.37 millionths of the radius: 5 µm at 13 m.
constexpr double kCubicSweep = std::numbers::pi / 6;

void addArc(QPainterPath& path, const OutlinePiece& arc, const View& view) {
    const double sweep = sweepOf(arc) * (arc.turn == Turn::Left ? 1 : -1);
    const int parts = std::max(1, static_cast<int>(std::ceil(std::abs(sweep) / kCubicSweep - 1e-9)));
    const double step = sweep / parts;
    const double reach = 4.0 / 3 * std::tan(step / 4);
    const double start = std::atan2(arc.from.y - arc.centre.y, arc.from.x - arc.centre.x);
    for (int i = 0; i < parts; ++i) {
        const double a = start + i * step;
        const double b = a + step;
        const Point u{arc.radius * std::cos(a), arc.radius * std::sin(a)};
        const Point v{arc.radius * std::cos(b), arc.radius * std::sin(b)};
        const Point end = i + 1 == parts ? arc.to : arc.centre + v;
        path.cubicTo(view.toDevice(arc.centre + u + reach * leftOf(u)),
                     view.toDevice(arc.centre + v - reach * leftOf(v)), view.toDevice(end));
    }
}

QPen penOf(const LineType& type, const View& view) {
    const double mm = type.wide ? kWideLine : kNarrowLine;
    const double width = view.screen ? (type.wide ? 2 : 1) : mm * view.paperMm * view.lineScale;
    QPen pen(type.colour, width);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    if (type.dashes.empty()) return pen;
    QList<qreal> pattern;  // counted in line widths
    for (const double dash : type.dashes) pattern.append(dash * view.paperMm / width);
    pen.setDashPattern(pattern);
    return pen;
}

class PainterSurface : public Surface {
  public:
    PainterSurface(QPainter& painter, const View& view) : m_painter(painter), m_view(view) {}

    void begin(Ink, const std::string&) override {}

    void line(Point from, Point to, const LineType& type) override {
        m_painter.setPen(penOf(type, m_view));
        m_painter.drawLine(QLineF(m_view.toDevice(from), m_view.toDevice(to)));
    }

    void area(const std::vector<OutlineLoop>& loops, const QColor& fill, const LineType* type) override {
        if (m_view.screen && !type && loops.size() == 1 && fillBand(loops.front(), fill)) return;
        m_painter.setPen(type ? penOf(*type, m_view) : QPen(Qt::NoPen));
        m_painter.setBrush(fill.isValid() ? QBrush(fill) : QBrush(Qt::NoBrush));
        m_painter.drawPath(pathOf(loops, m_view));
    }

    void circle(Point centre, double radius, const QColor& fill, const LineType* type) override {
        area({circleLoop(centre, radius)}, fill, type);
    }

    void text(const Label& label, const QColor& colour, const QColor& halo) override {
        const QString text = QString::fromStdString(label.text);
        const double size = label.height * m_view.paperMm * m_view.textScale;
        m_painter.save();
        m_painter.translate(m_view.toDevice(label.at));
        m_painter.rotate(-label.turn);
        if (m_view.screen) {
            drawScreenText(text, size, label.anchor, colour, halo);
        } else {
            m_painter.scale(size / kLetteringSize, size / kLetteringSize);
            m_painter.setFont(letteringFont());
            drawPlacedText(text, label.anchor, colour, halo);
        }
        m_painter.restore();
    }

    [[nodiscard]] double markScale() const override { return m_view.paperMm / m_view.perMmX; }

    [[nodiscard]] std::optional<Box> visible() const override {
        if (!m_view.screen) return std::nullopt;
        // Counted in the painter's own units: the screen's finer pixels are none of its business.
        const QRectF seen = m_painter.worldTransform().inverted().mapRect(QRectF(m_painter.viewport()));
        return Box{m_view.toDrawing(seen.bottomLeft()), m_view.toDrawing(seen.topRight())};
    }

  private:
    /// Long straight-sided shapes on a screen: filled on whole pixels, their sides smoothed after. To smooth the filling
    /// itself takes the software raster ten times as long, and a plan of 40 lines has 40 kerf bands.
    bool fillBand(const OutlineLoop& loop, const QColor& fill) {
        constexpr double kLong = 64;  // pixels
        if (std::ranges::any_of(loop, &OutlinePiece::isArc)) return false;
        QPolygonF corners;
        for (const OutlinePiece& piece : loop) corners << m_view.toDevice(piece.from);
        const QRectF bounds = corners.boundingRect();
        if (std::max(bounds.width(), bounds.height()) < kLong || fill.alpha() < 255) return false;
        const bool smooth = m_painter.testRenderHint(QPainter::Antialiasing);
        m_painter.setRenderHint(QPainter::Antialiasing, false);
        m_painter.setPen(Qt::NoPen);
        m_painter.setBrush(fill);
        m_painter.drawPolygon(corners);
        m_painter.setRenderHint(QPainter::Antialiasing, smooth);
        m_painter.setPen(QPen(fill, 1));
        for (qsizetype i = 0; i < corners.size(); ++i) m_painter.drawLine(corners[i], corners[(i + 1) % corners.size()]);
        return true;
    }

    void drawScreenText(const QString& text, double size, Anchor anchor, const QColor& colour,
                        const QColor& halo) {
        QFont font = letteringFont();
        font.setPixelSize(std::max(6, static_cast<int>(std::lround(size))));
        font.setHintingPreference(QFont::PreferDefaultHinting);
        m_painter.setFont(font);
        drawPlacedText(text, anchor, colour, halo);
    }

    void drawPlacedText(const QString& text, Anchor anchor, const QColor& colour, const QColor& halo) {
        const QFontMetricsF metrics(m_painter.font());
        const double width = metrics.horizontalAdvance(text);
        const double left = anchor == Anchor::Left ? 0 : anchor == Anchor::Middle ? -width / 2 : -width;
        if (halo.isValid()) {
            const double room = metrics.capHeight() * 0.25;
            const QRectF behind(left - room, -metrics.capHeight() - room, width + 2 * room,
                                metrics.capHeight() + 2 * room);
            m_painter.fillRect(behind, halo);
        }
        m_painter.setPen(colour);
        m_painter.drawText(QPointF(left, 0), text);
    }

    QPainter& m_painter;
    const View& m_view;
};

}  // namespace

View screenView(QPointF origin, double perMm, double textScale) {
    return {origin, perMm, perMm, kPixelsPerMm, textScale, true};
}

View paperView(QPointF origin, double scaleX, double scaleY) { return {origin, scaleX, scaleY, 1, 1, false, 1}; }

static void addRun(QPainterPath& path, const OutlineLoop& run, const View& view) {
    if (run.empty()) return;
    path.moveTo(view.toDevice(run.front().from));
    for (const OutlinePiece& piece : run) {
        if (piece.isArc) {
            addArc(path, piece, view);
        } else {
            path.lineTo(view.toDevice(piece.to));
        }
    }
}

QPainterPath runPath(const OutlineLoop& run, const View& view) {
    QPainterPath path;
    addRun(path, run, view);
    return path;
}

QPainterPath pathOf(const std::vector<OutlineLoop>& loops, const View& view) {
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    for (const OutlineLoop& loop : loops) {
        if (loop.empty()) continue;
        addRun(path, loop, view);
        path.closeSubpath();
    }
    return path;
}

void paintDrawing(QPainter& painter, const Drawing& drawing, const Palette& palette, const View& view) {
    painter.save();
    PainterSurface surface(painter, view);
    drawMarks(surface, drawing, palette);
    painter.restore();
}

void paintSign(QPainter& painter, QPointF centre, double size, Severity severity, const QString& text,
               const Palette& palette) {
    painter.save();
    const View view = screenView(centre, 1);
    PainterSurface surface(painter, view);
    drawSign(surface, {0, 0}, size / view.paperMm, severity, text.toStdString(), palette);
    painter.restore();
}

QPen thinPen(const QColor& colour, double width) {
    QPen pen(colour, width);
    pen.setCapStyle(Qt::FlatCap);
    return pen;
}

}  // namespace kerfwall
