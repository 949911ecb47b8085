// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_column.h"

#include <memory>
#include <utility>

namespace kerfwall {
namespace {

constexpr double kFootRoom = 8;  // mm under the blocks, for the page's foot
constexpr double kFootHeight = 2.8;

}  // namespace

void PaperColumn::nextPage() {
    m_pages.emplace_back();
    m_at = 0;
}

void PaperColumn::keepTogether(double height) {
    const double room = m_height - 2 * m_margin - kFootRoom;
    if (m_at > 0 && m_at + height > room) nextPage();
}

void PaperColumn::block(double height, Paint paint) {
    keepTogether(height);
    m_pages.back().push_back({m_margin + m_at, std::move(paint)});
    m_at += height;
}

void PaperColumn::paragraph(const QString& text, const Lettering& lettering, double indent) {
    const double step = lettering.height * kLineStep;
    for (const QString& line : brokenLines(text, width() - indent, lettering)) {
        block(step, [line, lettering, x = left() + indent](QPainter& painter, double top) {
            writeText(painter, {x, top + lettering.height}, line, lettering);
        });
    }
}

double PaperColumn::paragraphHeight(const QString& text, const Lettering& lettering, double indent) const {
    return lettering.height * kLineStep *
           static_cast<double>(brokenLines(text, width() - indent, lettering).size());
}

std::vector<PaperPage> PaperColumn::pages(const QString& foot) const {
    const auto placed = std::make_shared<std::vector<std::vector<Placed>>>(m_pages);
    std::vector<PaperPage> pages;
    for (std::size_t i = 0; i < placed->size(); ++i) {
        const QString number = PaperWords::tr("page %1 of %2").arg(i + 1).arg(placed->size());
        pages.push_back({m_width, m_height, [placed, i, foot, number, *this](QPainter& painter) {
                             for (const Placed& block : (*placed)[i]) block.paint(painter, block.top);
                             Lettering letters{kFootHeight, false, QColor(0x4a, 0x4a, 0x4a)};
                             const double y = m_height - m_margin;
                             writeText(painter, {left(), y}, shortened(foot, width() - 40, letters), letters);
                             letters.anchor = Anchor::Right;
                             writeText(painter, {right(), y}, number, letters);
                         }});
    }
    return pages;
}

}  // namespace kerfwall
