// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_label.h"

#include <algorithm>
#include <memory>
#include <utility>
#include <vector>

#include "ui/palette.h"
#include "ui/paper_facts.h"
#include "ui/paper_pattern.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

// mm. ISO 216 A7, lying.
constexpr double kWidth = 105;
constexpr double kHeight = 74;
constexpr double kEdge = 6;
constexpr double kFootLine = 10;  // from the bottom: the date's rule
const Lettering kWorkSizes{4.4, true};
constexpr int kMostTitleLines = 2;

struct LabelText {
    QStringList title;
    QStringList work;
    QStringList facts;
    bool unsure = false;
};

constexpr double kTop = 5;
constexpr double kFoot = kHeight - kFootLine - 5;  // the texts end here
const Lettering kUnsure{7, true};
const Lettering kTitle{5.6, true};
const Lettering kSmall{2.8};
const Lettering kFacts{3.3};
constexpr double kBetween = 1;

/// Every text with its lettering, from top to bottom.
std::vector<std::pair<QStringList, Lettering>> blocksOf(const LabelText& text) {
    Lettering warning = kUnsure;
    warning.colour = paletteOf(PaletteKind::Paper).stop;
    return {{text.unsure ? QStringList{PaperWords::tr("Unsure: settle first")} : QStringList{}, warning},
            {text.title, kTitle},
            {{PaperWords::tr("Cuts in the work")}, kSmall},
            {text.work, kWorkSizes},
            {text.facts, kFacts}};
}

void paintTexts(QPainter& painter, const LabelText& text) {
    const auto blocks = blocksOf(text);
    double needed = 0;
    for (const auto& [lines, letters] : blocks) {
        needed += kBetween + letters.height * kLineStep * static_cast<double>(lines.size());
    }
    // Many cutouts make small letters: nothing is left off the label.
    const double scale = std::min(1.0, (kFoot - kTop) / needed);
    double top = kTop;
    for (const auto& [lines, lettering] : blocks) {
        Lettering letters = lettering;
        letters.height *= scale;
        for (const QString& line : lines) {
            writeText(painter, {kEdge, top + letters.height}, shortened(line, kWidth - 2 * kEdge, letters),
                      letters);
            top += letters.height * kLineStep;
        }
        top += kBetween * scale;
    }
}

void paintLabel(QPainter& painter, const LabelText& text) {
    painter.setPen(QPen(Qt::black, 0.35));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(3, 3, kWidth - 6, kHeight - 6));
    paintTexts(painter, text);
    const double y = kHeight - kFootLine;
    writeText(painter, {kEdge, y}, PaperWords::tr("Made on"), kFacts);
    painter.setPen(QPen(Qt::black, 0.25));
    painter.drawLine(QLineF(kEdge + 17, y + 0.6, kEdge + 52, y + 0.6));
    Lettering right = kSmall;
    right.anchor = Anchor::Right;
    writeText(painter, {kWidth - kEdge, y}, PaperWords::tr("try it on scrap first"), right);
}

}  // namespace

PaperPage labelPage(const Project& project, const Solved& solved, const std::vector<Finding>& findings) {
    const auto text = std::make_shared<LabelText>();
    text->title = brokenLines(titleOf(project), kWidth - 2 * kEdge, kTitle).mid(0, kMostTitleLines);
    for (const QString& fact : workFacts(project, solved)) {
        text->work += brokenLines(fact, kWidth - 2 * kEdge, kWorkSizes);
    }
    text->facts = {guideFact(project, solved),
                   solved.use.againstWork == Face::Back ? PaperWords::tr("Back on the work")
                                                        : PaperWords::tr("Layout face on the work"),
                   panelFact(project)};
    text->unsure = !unsureSentences(findings).isEmpty();
    return {kWidth, kHeight, [text](QPainter& painter) { paintLabel(painter, *text); }};
}

}  // namespace kerfwall
