// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <functional>
#include <vector>

#include "ui/paper_pdf.h"
#include "ui/paper_text.h"

namespace kerfwall {

/// A column of blocks that runs from page to page. Lengths in mm.
class PaperColumn {
  public:
    using Paint = std::function<void(QPainter&, double top)>;

    PaperColumn(double width, double height, double margin)
        : m_width(width), m_height(height), m_margin(margin) {}

    [[nodiscard]] double left() const { return m_margin; }
    [[nodiscard]] double right() const { return m_width - m_margin; }
    [[nodiscard]] double width() const { return m_width - 2 * m_margin; }

    /// Goes on to the next page where less than `height` is left on this one.
    void keepTogether(double height);
    void space(double height) { m_at += height; }
    /// A block; it goes on the next page where it does not fit on this one.
    void block(double height, Paint paint);
    /// A paragraph, broken at its spaces, `indent` from the left; it may run on to the next page.
    void paragraph(const QString& text, const Lettering& lettering, double indent = 0);
    [[nodiscard]] double paragraphHeight(const QString& text, const Lettering& lettering,
                                         double indent = 0) const;

    /// The pages; `foot` is written under each, with its number.
    [[nodiscard]] std::vector<PaperPage> pages(const QString& foot) const;

  private:
    struct Placed {
        double top = 0;
        Paint paint;
    };
    void nextPage();

    double m_width;
    double m_height;
    double m_margin;
    double m_at = 0;  // below the margin
    std::vector<std::vector<Placed>> m_pages{1};
};

}  // namespace kerfwall
