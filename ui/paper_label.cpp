// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_label.h"

#include <memory>

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
constexpr int kMostTitleLines = 2;

struct LabelText {
    QStringList title;
    QStringList work;
    QStringList facts;
    bool unsure = false;
};

/// Lines one under another, each shortened to the label's width; gives the next baseline's top.
double writeLines(QPainter& painter, const QStringList& lines, double top, const Lettering& letters, double foot) {
    for (const QString& line : lines) {
        if (top + letters.height > foot) break;
        writeText(painter, {kEdge, top + letters.height}, shortened(line, kWidth - 2 * kEdge, letters), letters);
        top += letters.height * kLineStep;
    }
    return top;
}

void paintLabel(QPainter& painter, const LabelText& text) {
    painter.setPen(QPen(Qt::black, 0.35));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(3, 3, kWidth - 6, kHeight - 6));
    const double foot = kHeight - kFootLine - 6;
    double top = 5;
    if (text.unsure) {
        Lettering large{7, true};
        large.colour = QColor(0xb5, 0x3a, 0x00);
        top = writeLines(painter, {PaperWords::tr("Unsure: settle first")}, top, large, foot);
    }
    top = writeLines(painter, text.title, top, {5.6, true}, foot) + 1;
    top = writeLines(painter, {PaperWords::tr("Cuts in the work")}, top, {2.8}, foot);
    top = writeLines(painter, text.work, top, {4.4, true}, foot) + 1;
    writeLines(painter, text.facts, top, {3.3}, foot + 4);
    const double y = kHeight - kFootLine;
    writeText(painter, {kEdge, y}, PaperWords::tr("Made on"), {3.3});
    painter.setPen(QPen(Qt::black, 0.25));
    painter.drawLine(QLineF(kEdge + 17, y + 0.6, kEdge + 52, y + 0.6));
    Lettering right{2.6};
    right.anchor = Anchor::Right;
    writeText(painter, {kWidth - kEdge, y}, PaperWords::tr("try it on scrap first"), right);
}

}  // namespace

PaperPage labelPage(const Project& project, const Solved& solved, const std::vector<Finding>& findings) {
    const auto text = std::make_shared<LabelText>();
    text->title = brokenLines(titleOf(project), kWidth - 2 * kEdge, {5.6, true}).mid(0, kMostTitleLines);
    text->work = workFacts(project, solved);
    text->facts = {guideFact(project, solved),
                   solved.use.againstWork == Face::Back ? PaperWords::tr("Back on the work")
                                                        : PaperWords::tr("Layout face on the work"),
                   panelFact(project)};
    text->unsure = !unsureSentences(findings).isEmpty();
    return {kWidth, kHeight, [text](QPainter& painter) { paintLabel(painter, *text); }};
}

}  // namespace kerfwall
