// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/label_words.h"

#include "core/shop/cutters_in_turn.h"
#include "ui/paper_facts.h"
#include "ui/paper_pattern.h"
#include "ui/paper_setting.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

bool baseOnTemplate(const Project& project) {
    return isBaseOnTemplate(project.use, project.use.bearingAt.value_or(trimBitOf(project).bearingAt));
}

QString guideWords(const Project& project, const Solved& solved) {
    if (!project.use.byBush) return guideFact(project, solved);
    return PaperWords::tr("%1; the bush stands out %2").arg(guideFact(project, solved), lengthWords(project, project.use.bushLength));
}

/// "1. Roughing bit 10 mm: 6 mm deep, set 18 mm below the base".
QString cutterWords(const Project& project, const CutterInTurn& cutter, int number) {
    const QString name = QString::fromStdString(cutter.name).simplified();
    const QString size = lengthWords(project, cutter.diameter);
    QString words = name.isEmpty() ? PaperWords::tr("Cutter %1").arg(size) : PaperWords::tr("%1, %2").arg(name, size);
    if (number > 0) words = PaperWords::tr("%1. %2").arg(number).arg(words);
    const bool onTemplate = baseOnTemplate(project);
    if (cutter.depth) words = PaperWords::tr("%1: %2 deep").arg(words, lengthWords(project, *cutter.depth));
    if (!onTemplate) return words;
    const QString below = lengthWords(project, belowBase(project.panel, cutter.depth.value_or(0)));
    return cutter.depth ? PaperWords::tr("%1, set %2 below the base").arg(words, below)
                        : PaperWords::tr("%1: set %2 and the depth wanted below the base").arg(words, below);
}

QStringList cutterFacts(const Project& project, const Solved& solved) {
    const auto turns = cuttersInTurn(project, solved);
    QStringList facts;
    for (std::size_t i = 0; i < turns.size(); ++i) {
        facts += cutterWords(project, turns[i], turns.size() > 1 ? static_cast<int>(i) + 1 : 0);
    }
    return facts;
}

QString bandWords(const Project& project, const UnbrokenBand& band) {
    const QString words = project.use.byBush
                              ? PaperWords::tr("Bored corners: bush only between %1 and %2 below the layout face")
                              : PaperWords::tr("Bored corners: bearing only between %1 and %2 below the layout face");
    return words.arg(lengthWords(project, band.from), lengthWords(project, band.to));
}

}  // namespace

LabelWords labelWords(const Project& project, const Solved& solved, const std::vector<Finding>& findings) {
    LabelWords words;
    words.title = titleOf(project);
    words.work = workFacts(project, solved);
    words.facts << guideWords(project, solved) << cutterFacts(project, solved);
    if (const auto band = unbrokenBand(project, solved)) words.facts << bandWords(project, *band);
    words.facts << (solved.use.againstWork == Face::Back ? PaperWords::tr("Back on the work") : PaperWords::tr("Layout face on the work"));
    words.facts << panelFact(project);
    words.keepsSide = project.use.router == Router::Hand;
    words.unsure = !unsureSentences(findings).isEmpty();
    return words;
}

}  // namespace kerfwall
