// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/drawing/drawing.h"
#include "ui/ink_style.h"

namespace kerfwall {

/// What marks are drawn on. Places are the drawing's, in mm, y up; line widths, dashes and text heights
/// are mm on paper. A painter and the SVG writer are such surfaces, so that both show the same marks.
class Surface {
  public:
    Surface() = default;
    Surface(const Surface&) = delete;
    Surface& operator=(const Surface&) = delete;
    virtual ~Surface() = default;

    /// What the following shapes stand for, and whose they are ("A").
    virtual void begin(Ink ink, const std::string& id) = 0;
    virtual void line(Point from, Point to, const LineType& type) = 0;
    /// Filled by the even-odd rule where `fill` is valid, stroked where `type` is given.
    virtual void area(const std::vector<OutlineLoop>& loops, const QColor& fill, const LineType* type) = 0;
    virtual void circle(Point centre, double radius, const QColor& fill, const LineType* type) = 0;
    /// `halo`: a ground behind the letters where it is valid.
    virtual void text(const Label& label, const QColor& colour, const QColor& halo) = 0;
    /// mm of the drawing for one mm on paper.
    [[nodiscard]] virtual double markScale() const = 0;
    /// What of the drawing can be seen; nothing is said where all of it counts.
    [[nodiscard]] virtual std::optional<Box> visible() const { return std::nullopt; }
};

/// Draws every mark of a drawing on a surface, in order.
void drawMarks(Surface& surface, const Drawing& drawing, const Palette& palette);

/// A dimension's text: it interrupts the line where it fits between the arrow heads, else stands behind the far one.
/// Requires  the dimension has a length; `markScale` as Surface::markScale.
[[nodiscard]] Label dimensionLabel(const Dimension& mark, double markScale);

/// The sign of a finding at a place, `size` mm on paper high.
void drawSign(Surface& surface, Point at, double size, Severity severity, const std::string& number,
              const Palette& palette);

/// The width of a text of that height in mm, in the program's own font.
[[nodiscard]] double textWidth(const QString& text, double height);

}  // namespace kerfwall
