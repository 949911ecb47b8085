// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_label.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <utility>
#include <vector>

#include "ui/label_outline.h"
#include "ui/label_words.h"
#include "ui/palette.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

// mm.
constexpr double kPageWidth = 105;  // ISO 216 A7, lying
constexpr double kPageHeight = 74;
constexpr double kWidth = 98;  // inside its border; two by four of them stand on A4 and on letter with kSheetMargin
constexpr double kHeight = 66.5;
constexpr double kSheetMargin = 6.35;  // least that printers leave; trade
constexpr double kEdge = 3;
constexpr double kOutlineWidth = 32;
constexpr double kBetween = 0.8;      // blocks of text
constexpr double kFootHeight = 5.6;   // a line to write on
constexpr double kLeastBlank = 20;    // to write on
const Lettering kUnsure{7, true};
const Lettering kTitle{4.8, true};
const Lettering kWork{3.4, true};
const Lettering kFacts{2.9};
constexpr double kShrink = 0.97;  // letters grow smaller by this until all fits

struct Block {
    QString text;
    Lettering lettering;
    double width = 0;
};

struct Line {
    double foot = 0;
    QString text;
    Lettering lettering;
};

Lettering smaller(Lettering lettering, double scale) {
    lettering.height *= scale;
    return lettering;
}

std::vector<Line> linesOf(const std::vector<Block>& blocks, double scale, double& end) {
    std::vector<Line> lines;
    end = kEdge;
    for (const Block& block : blocks) {
        const Lettering letters = smaller(block.lettering, scale);
        for (const QString& text : brokenLines(block.text, block.width, letters)) {
            lines.push_back({end + letters.height, text, letters});
            end += letters.height * kLineStep;
        }
        end += kBetween * scale;
    }
    return lines;
}

/// As large as they fit above `foot`: nothing is left off the label.
std::vector<Line> fittedLines(const std::vector<Block>& blocks, double foot, double& scale) {
    double end = 0;
    scale = 1;
    std::vector<Line> lines = linesOf(blocks, scale, end);
    while (end > foot) {
        scale *= kShrink;
        lines = linesOf(blocks, scale, end);
    }
    return lines;
}

/// The text with room behind it to write on, up to `right`.
void paintBlank(QPainter& painter, double left, double right, double y, const QString& text) {
    const double room = right - left - kLeastBlank - 1.5;
    const double wide = widthOf(text, kFacts);
    const Lettering letters = wide > room ? smaller(kFacts, room / wide) : kFacts;
    writeText(painter, {left, y}, text, letters);
    painter.setPen(QPen(Qt::black, 0.25));
    painter.drawLine(QLineF(left + std::min(wide, room) + 1.5, y + 0.6, right, y + 0.6));
}

class LabelLayout {
  public:
    LabelLayout(const Project& project, const Solved& solved, const std::vector<Finding>& findings)
        : m_words(labelWords(project, solved, findings)) {
        const double foot = kHeight - kEdge - (m_words.keepsSide ? 2 : 1) * kFootHeight;
        double scale = 1;
        std::vector<Block> head;
        const double wide = kWidth - 2 * kEdge;
        Lettering warning = kUnsure;
        warning.colour = paletteOf(PaletteKind::Paper).stop;
        if (m_words.unsure) head.push_back({PaperWords::tr("Unsure: settle first"), warning, wide});
        head.push_back({m_words.title, kTitle, wide});
        const double headShare = m_words.unsure ? 0.45 : 0.24;  // of the label, at most
        m_lines = fittedLines(head, foot * headShare, scale);
        const double top = m_lines.back().foot + 1.5;
        const double column = wide - kOutlineWidth - 2;
        std::vector<Block> body{{PaperWords::tr("Cuts in the work"), kFacts, column}};
        for (const QString& fact : m_words.work) body.push_back({fact, kWork, column});
        for (const QString& fact : m_words.facts) body.push_back({fact, kFacts, column});
        for (Line line : fittedLines(body, foot - top + kEdge, scale)) {
            line.foot += top - kEdge;
            m_lines.push_back(line);
        }
        m_outline = labelOutline(project, solved, QRectF(kWidth - kEdge - kOutlineWidth, top, kOutlineWidth, foot - top - 1));
    }

    /// From its border's top-left corner.
    void paint(QPainter& painter) const {
        painter.setPen(QPen(Qt::black, 0.35));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(0, 0, kWidth, kHeight));
        for (const Line& line : m_lines) writeText(painter, {kEdge, line.foot}, line.text, line.lettering);
        paintLabelOutline(painter, m_outline);
        const double y = kHeight - kEdge - 0.6;
        const double middle = kWidth * 0.45;
        paintBlank(painter, kEdge, middle, y, PaperWords::tr("Made on"));
        paintBlank(painter, middle + 3, kWidth - kEdge, y, PaperWords::tr("by"));
        if (m_words.keepsSide) {
            paintBlank(painter, kEdge, kWidth - kEdge, y - kFootHeight, PaperWords::tr("Keep this side of the router towards you:"));
        }
    }

  private:
    LabelWords m_words;
    std::vector<Line> m_lines;
    LabelOutline m_outline;
};

int fitting(double room, double size) { return std::max(0, static_cast<int>(std::floor((room - 2 * kSheetMargin) / size))); }

}  // namespace

PaperPage labelPage(const Project& project, const Solved& solved, const std::vector<Finding>& findings) {
    const auto label = std::make_shared<LabelLayout>(project, solved, findings);
    return {kPageWidth, kPageHeight, [label](QPainter& painter) {
                painter.translate((kPageWidth - kWidth) / 2, (kPageHeight - kHeight) / 2);
                label->paint(painter);
            }};
}

LabelGrid labelGrid(const Paper& paper) {
    const LabelGrid as{fitting(paper.width, kWidth), fitting(paper.height, kHeight), false};
    const LabelGrid turned{fitting(paper.height, kWidth), fitting(paper.width, kHeight), true};
    return turned.columns * turned.rows > as.columns * as.rows ? turned : as;
}

PaperPage labelSheet(const Project& project, const Solved& solved, const std::vector<Finding>& findings, const Paper& paper) {
    const auto label = std::make_shared<LabelLayout>(project, solved, findings);
    const LabelGrid grid = labelGrid(paper);
    const double width = grid.isTurned ? paper.height : paper.width;
    const double height = grid.isTurned ? paper.width : paper.height;
    return {paper.width, paper.height, [=](QPainter& painter) {
                if (grid.isTurned) {
                    painter.translate(paper.width, 0);
                    painter.rotate(90);
                }
                painter.translate((width - grid.columns * kWidth) / 2, (height - grid.rows * kHeight) / 2);
                for (int row = 0; row < grid.rows; ++row) {
                    for (int column = 0; column < grid.columns; ++column) {
                        painter.save();
                        painter.translate(column * kWidth, row * kHeight);
                        label->paint(painter);
                        painter.restore();
                    }
                }
            }};
}

}  // namespace kerfwall
