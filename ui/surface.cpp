// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/surface.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/drawing/hatch.h"
#include "ui/lettering.h"

namespace kerfwall {
namespace {

// mm on paper.
constexpr double kArrow = 2.2;
constexpr double kArrowHalf = 0.45;
constexpr double kDimensionText = 3.2;
constexpr double kPastDimension = 1.5;
constexpr double kSign = 6;
constexpr double kPlaneEnd = 4;

class MarkDrawer {
  public:
    MarkDrawer(Surface& surface, const Palette& palette) : m_surface(surface), m_palette(palette) {}

    void operator()(const Area& mark) {
        m_surface.begin(mark.ink, mark.id);
        const AreaStyle style = areaStyle(mark.ink, m_palette);
        const LineType type = lineType(mark.ink, m_palette);
        if (style.fill.isValid()) {
            m_surface.area(mark.loops, style.fill, nullptr);
            m_fills.push_back({Outline{mark.loops, 0, 0, {}}, style.fill});
        }
        if (style.hatch.isValid()) {
            const LineType hatching{style.hatch, false, {}};
            const double spacing = style.hatchSpacing * m_surface.markScale();
            for (const auto& [from, to] :
                 hatchOf(mark.loops, spacing, style.hatchAngle, m_surface.visible())) {
                m_surface.line(from, to, hatching);
            }
        }
        if (style.border) m_surface.area(mark.loops, {}, &type);
    }

    void operator()(const Stroke& mark) const {
        m_surface.begin(mark.ink, mark.id);
        LineType type = lineType(mark.ink, m_palette);
        m_surface.line(mark.from, mark.to, type);
        const double whole = distance(mark.from, mark.to);
        if (mark.ink != Ink::CuttingPlane || whole <= 0) return;
        type.wide = true;
        type.dashes.clear();
        const Point end = std::min(kPlaneEnd * m_surface.markScale(), whole / 2) * unit(mark.to - mark.from);
        m_surface.line(mark.from, mark.from + end, type);
        m_surface.line(mark.to - end, mark.to, type);
    }

    void operator()(const Circle& mark) const {
        m_surface.begin(mark.ink, mark.id);
        if (mark.ink == Ink::FindingStop || mark.ink == Ink::FindingCare || mark.ink == Ink::FindingNote) {
            drawSign(m_surface, mark.centre, kSign, severityOf(mark.ink), mark.id, m_palette);
            return;
        }
        const LineType type = lineType(mark.ink, m_palette);
        m_surface.circle(mark.centre, mark.radius, {}, &type);
    }

    void operator()(const Label& mark) const {
        m_surface.begin(mark.ink, mark.id);
        const LineType type = lineType(mark.ink, m_palette);
        m_surface.text(mark, mark.ink == Ink::Text ? m_palette.text : type.colour, {});
    }

    void operator()(const Dimension& mark) const {
        const double whole = distance(mark.from, mark.to);
        if (whole <= 0) return;
        m_surface.begin(Ink::Dimension, mark.id);
        const double scale = m_surface.markScale();
        const LineType type = lineType(Ink::Dimension, m_palette);
        const Point along = unit(mark.to - mark.from);
        const Point left = leftOf(along);
        const Point from = mark.from + mark.offset * left;
        const Point to = mark.to + mark.offset * left;
        if (mark.offset != 0) {
            const Point past = (mark.offset > 0 ? kPastDimension : -kPastDimension) * scale * left;
            m_surface.line(mark.from, from + past, type);
            m_surface.line(mark.to, to + past, type);
        }
        const bool inside = whole > 2.1 * kArrow * scale;
        drawArrows(from, to, along, inside, type);
        if (mark.text.empty()) return;
        const Label label = dimensionLabel(mark, scale);
        m_surface.text(label, m_palette.text, groundAt(label.at));
    }

  private:
    /// Arrow heads inside pointing out, or outside pointing in where there is no room.
    void drawArrows(Point from, Point to, Point along, bool inside, const LineType& type) const {
        const double scale = m_surface.markScale();
        const Point reach = kArrow * scale * along;
        m_surface.line(inside ? from : from - 2.0 * reach, inside ? to : to + 2.0 * reach, type);
        drawArrow(from, inside ? along : -1.0 * along);
        drawArrow(to, inside ? -1.0 * along : along);
    }

    void drawArrow(Point tip, Point back) const {
        const double scale = m_surface.markScale();
        const Point foot = tip + kArrow * scale * back;
        const Point half = kArrowHalf * scale * leftOf(back);
        m_surface.area({polygonLoop({tip, foot + half, foot - half})}, lineType(Ink::Dimension, m_palette).colour,
                       nullptr);
    }

    /// What was filled last at a place: a text's ground there.
    [[nodiscard]] QColor groundAt(Point place) const {
        for (std::size_t i = m_fills.size(); i-- > 0;) {
            if (isInside(m_fills[i].outline, place)) return m_fills[i].colour;
        }
        return m_palette.ground;
    }

    struct Fill {
        Outline outline;
        QColor colour;
    };
    Surface& m_surface;
    const Palette& m_palette;
    std::vector<Fill> m_fills;
};

}  // namespace

void drawMarks(Surface& surface, const Drawing& drawing, const Palette& palette) {
    MarkDrawer drawer(surface, palette);
    for (const Mark& mark : drawing.marks) std::visit([&](const auto& kind) { drawer(kind); }, mark);
}

Label dimensionLabel(const Dimension& mark, double scale) {
    const double whole = distance(mark.from, mark.to);
    const Point along = unit(mark.to - mark.from);
    const Point from = mark.from + mark.offset * leftOf(along), to = mark.to + mark.offset * leftOf(along);
    const double letters = textWidth(QString::fromStdString(mark.text), kDimensionText) * scale;
    const bool fits = whole > letters + 2.6 * kArrow * scale;
    Label label{Ink::Text, {}, mark.text, kDimensionText, Anchor::Middle, 0, mark.id};
    const bool level = std::abs(along.x) > 0.5;
    const Point drop{0, -0.36 * kDimensionText * scale};
    if (fits || !level) label.at = 0.5 * (from + to) + drop;
    if (!fits) {
        const Point beside = level ? (2.3 * kArrow * scale) * along : Point{2 * scale, 0};
        label.anchor = along.x < -0.5 ? Anchor::Right : Anchor::Left;
        label.at = level ? to + beside + drop : label.at + beside;
    }
    return label;
}

void drawSign(Surface& surface, Point at, double size, Severity severity, const std::string& number,
              const Palette& palette) {
    const double half = size / 2 * surface.markScale();
    const QColor colour = signColour(palette, severity);
    const LineType border{colour, true, {}};
    Label label{Ink::Text, at, number, size * 0.55, Anchor::Middle, 0, number};
    QColor letters = colour;
    double drop = 0.36;
    if (severity == Severity::Stop) {
        const Point c{half * 0.9, half * 0.9};
        surface.area({polygonLoop({at - c, {at.x + c.x, at.y - c.y}, at + c, {at.x - c.x, at.y + c.y}})}, colour,
                     &border);
        letters = palette.kind == PaletteKind::Dark ? palette.ground : QColor(Qt::white);
    } else if (severity == Severity::Care) {
        const double wide = half * 2 / std::numbers::sqrt3 * 1.05;
        surface.area(
            {polygonLoop(
                {{at.x - wide, at.y - half * 0.85}, {at.x + wide, at.y - half * 0.85}, {at.x, at.y + half}})},
            palette.ground, &border);
        drop = 0.72;
        label.height = size * 0.48;
    } else {
        surface.circle(at, half * 0.9, palette.ground, &border);
    }
    label.at.y -= drop * label.height * surface.markScale();
    surface.text(label, letters, {});
}

double textWidth(const QString& text, double height) {
    const QFontMetricsF metrics(letteringFont());
    return metrics.horizontalAdvance(text) / kLetteringSize * height;
}

}  // namespace kerfwall
