// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/card_texts.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "core/shop/cautions.h"
#include "ui/bench_rows.h"
#include "ui/exact_words.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

QString text(const char* source) { return QCoreApplication::translate("kerfwall::JobCard", source); }
QString counted(const char* source, qsizetype n) {
    return QCoreApplication::translate("kerfwall::JobCard", source, nullptr, static_cast<int>(n));
}
QString plain(const std::string& s) { return QString::fromStdString(s); }

QString severityText(Severity severity) {
    switch (severity) {
        case Severity::Stop: return text("Stop");
        case Severity::Care: return text("Take care");
        case Severity::Note: return text("Note");
    }
    return {};
}

CardRow::Kind kindOf(Severity severity) {
    switch (severity) {
        case Severity::Stop: return CardRow::Kind::Stop;
        case Severity::Care: return CardRow::Kind::Care;
        case Severity::Note: return CardRow::Kind::Note;
    }
    return CardRow::Kind::Note;
}

QString namesOf(const std::vector<LineId>& lines) {
    QStringList names;
    for (const LineId& id : lines) names << plain(id);
    return names.join(QStringLiteral(", "));
}

QString placeOf(const Finding& finding) {
    if (!finding.lines.empty()) {
        return finding.lines.size() == 1 ? text("line %1").arg(plain(finding.lines.front()))
                                         : text("lines %1").arg(namesOf(finding.lines));
    }
    if (finding.hole) return text("clamp hole %1").arg(*finding.hole + 1);
    if (finding.fence) return text("fence %1").arg(*finding.fence + 1);
    if (!finding.cutout.empty()) return text("cutout %1").arg(plain(finding.cutout));
    return {};
}

QString sawText(const Project& project, const WorkStep& step) {
    const Saw* saw = findSaw(benchOf(project), step.saw);
    if (!saw) return text("By hand");
    return sawKindText(saw->kind);
}

/// A sled stands between table and panel: the blade's height above both, lest one is taken for the other.
QString bladeText(const Project& project, const WorkStep& step) {
    const double up = *step.setting.bladeHeight;
    const Saw* saw = findSaw(benchOf(project), step.saw);
    const QString above = sizeFor(up, project.units);
    if (!saw || saw->kind != SawKind::CrosscutSled) return text("blade %1 up").arg(above);
    return text("blade %1 above the table, %2 above the sled").arg(above, sizeFor(up - saw->base, project.units));
}

/// "Rip fence 101.85, blade 6 up": what is set, in the order it is set.
QString settingText(const Project& project, const WorkStep& step) {
    const Setting& set = step.setting;
    const auto size = [&](double mm) { return sizeFor(mm, project.units); };
    QStringList parts;
    QString first = sawText(project, step);
    const auto setAt = [&](double last) {
        const bool isOther = step.firstCut && size(step.firstCut->at) != size(last);
        return isOther ? text("%1, then %2").arg(size(step.firstCut->at), size(last)) : size(last);
    };
    if (set.fence) first += QLatin1Char(' ') + setAt(*set.fence);
    parts << first;
    if (set.angle && *set.angle != 0) parts << text("turned %1").arg(angleFor(*set.angle));
    if (set.wedge) parts << text("wedge %1 over %2").arg(size(set.wedge->rise), size(set.wedge->length));
    if (set.stop) parts << text("stop %1").arg(setAt(*set.stop));
    if (set.bladeHeight) parts << bladeText(project, step);
    if (set.depth) parts << text("depth %1").arg(size(*set.depth));
    return parts.join(QStringLiteral(", "));
}

QString taskText(const Project& project, const WorkStep& step) {
    switch (step.task) {
        case Task::Mark: return step.see.empty() ? text("Check the reference edge") : text("Mark the edges");
        case Task::Bore: return text("Bore the corners");
        case Task::Kerf: return settingText(project, step);
        case Task::Drill: return text("Drill the relief holes");
        case Task::Rough: return text("Saw out the waste, inside the kerfs");
        case Task::Trim: {
            if (!step.setting.bearing) return text("Trim");
            return text("Trim, bearing's lower end at %1").arg(sizeFor(*step.setting.bearing, project.units));
        }
        case Task::Hole: return text("Clamp holes");
        case Task::Fence: return text("Fences");
        case Task::Hand: return text("By hand");
        case Task::Label: return text("Label");
    }
    return {};
}

QString firstSentence(const QString& whole) {
    for (qsizetype end = whole.indexOf(QStringLiteral(". ")); end >= 0; end = whole.indexOf(QStringLiteral(". "), end + 1)) {
        // A sentence ends where the next begins with a capital; "8.0 mm" and the like go on.
        if (end + 2 < whole.size() && whole.at(end + 2).isUpper()) return whole.left(end + 1);
    }
    return whole;
}

/// A long sentence up to its first comma or colon: the rest is read where it is needed.
QString shortened(const QString& sentence) {
    constexpr qsizetype kTwoLines = 120;
    if (sentence.size() <= kTwoLines) return sentence;
    for (qsizetype at = 0; at + 1 < sentence.size(); ++at) {
        const bool pause = sentence.at(at) == QLatin1Char(',') || sentence.at(at) == QLatin1Char(':') || sentence.at(at) == QLatin1Char(';');
        if (pause && sentence.at(at + 1).isSpace()) return sentence.left(at) + QStringLiteral(" …");
    }
    return sentence;
}

/// What stands under a step until it is chosen: for a kerf how the panel lies, else the text's first sentence.
QString briefText(const WorkStep& step) {
    if (step.task == Task::Kerf) {
        QString words = text(step.lines.size() == 1 ? "kerf %1" : "kerfs %1").arg(namesOf(step.lines));
        words += step.faceUp ? text(", face up") : text(", face down");
        if (step.against) words += text(", %1 on the fence").arg(edgeText(*step.against));
        return words;
    }
    const QString whole = plain(step.text);
    if (step.task == Task::Mark && !step.lines.empty()) return text("lines %1, ticks on the waste side").arg(namesOf(step.lines));
    return shortened(firstSentence(whole));
}

QString boundsText(const Outline& outline, Units units) {
    const double width = outline.bounds.high.x - outline.bounds.low.x;
    const double height = outline.bounds.high.y - outline.bounds.low.y;
    return text("%1 × %2").arg(sizeFor(width, units), sizeFor(height, units));
}

/// One row of the sizes and the lines it is measured between.
struct SizeRow {
    QString heading;
    QString text;
    std::vector<LineId> lines;
    QString exact = {};
    QString whole = {};  // the same at length
};

void addSizes(std::vector<SizeRow>& rows, const Project& project, const SolvedCutout& cutout, const CutoutExactness& exact) {
    const Units units = project.units;
    const QString id = plain(cutout.id);
    if (cutout.opening.loops.empty()) {
        rows.push_back({text("%1: the trimming bit does not fit").arg(id), {}, {}});
    } else {
        rows.push_back({text("%1 in the template").arg(id), boundsText(cutout.opening, units), {}, angleExactWords(exact)});
    }
    for (std::size_t i = 0; i < cutout.sizes.size(); ++i) {
        const FacingSize& size = cutout.sizes[i];
        const QString between = text("between %1 and %2").arg(plain(size.first), plain(size.second));
        const QString value = size.atEnds ? text("%1 to %2").arg(sizeFor(size.atEnds->first, units),
                                                                  sizeFor(size.atEnds->second, units))
                                          : sizeFor(size.distance, units);
        const bool isTold = i < exact.sizes.size() && exact.sizes[i];
        SizeRow row{between, value, {size.first, size.second}};
        if (isTold) row.exact = exactWords(*exact.sizes[i], units);
        if (isTold) row.whole = exactSentences(*exact.sizes[i], size.distance, units);
        rows.push_back(row);
    }
    if (!cutout.work.loops.empty()) rows.push_back({text("cut in the work"), boundsText(cutout.work, units), {}});
    const Cutout& said = project.cutouts.at(cutout.index);
    if (said.wanted && !said.wanted->outline.empty()) {
        Box box{said.wanted->outline.front(), said.wanted->outline.front()};
        for (const Point p : said.wanted->outline) {
            box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
            box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
        }
        rows.push_back({text("wanted in the work"),
                        text("%1 × %2").arg(sizeFor(box.high.x - box.low.x, units), sizeFor(box.high.y - box.low.y, units)),
                        {}});
    }
}

/// Without a list of how exact they are, the bare sizes.
std::vector<SizeRow> sizeRows(const Project& project, const Solved& solved, const std::vector<CutoutExactness>& exact) {
    std::vector<SizeRow> rows;
    for (std::size_t i = 0; i < solved.cutouts.size(); ++i) {
        addSizes(rows, project, solved.cutouts[i], i < exact.size() ? exact[i] : CutoutExactness{});
    }
    return rows;
}

}  // namespace

std::vector<CardRow::Text> findingTexts(const std::vector<Finding>& findings) {
    std::vector<CardRow::Text> rows;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const Finding& finding = findings[i];
        const QString place = placeOf(finding);
        const QString heading = severityText(finding.severity) + (place.isEmpty() ? QString() : QStringLiteral(": ") + place);
        rows.push_back({kindOf(finding.severity), QString::number(i + 1), heading, firstSentence(plain(finding.text)), plain(finding.text)});
    }
    return rows;
}

std::vector<CardRow::Text> stepTexts(const Project& project, const OrderOfWork& order) {
    std::vector<CardRow::Text> rows;
    for (const WorkStep& step : order.steps) {
        QString whole = plain(step.text);
        if (!step.because.empty()) whole += QLatin1Char('\n') + plain(step.because);
        const auto said = stepWithSameCautions(order, step);
        if (said) {
            whole += QLatin1Char('\n') + text("Cautions as in step %1.").arg(*said);
        } else {
            for (const std::string& caution : step.cautions) whole += QLatin1Char('\n') + plain(caution);
        }
        rows.push_back({CardRow::Kind::Step, QString::number(step.number), taskText(project, step), briefText(step), whole});
    }
    return rows;
}

std::vector<CardRow::Text> sizeTexts(const Project& project, const Solved& solved, const OrderOfWork& order) {
    std::vector<CardRow::Text> rows;
    for (const SizeRow& row : sizeRows(project, solved, exactness(project, solved, order))) {
        rows.push_back({CardRow::Kind::Size, row.text, row.heading, row.exact, row.whole});
    }
    return rows;
}

std::vector<LineId> sizeLines(const Project& project, const Solved& solved, std::size_t row) {
    const std::vector<SizeRow> rows = sizeRows(project, solved, {});
    return row < rows.size() ? rows[row].lines : std::vector<LineId>{};
}

QString findingSummary(const std::vector<Finding>& findings) {
    const auto count = [&](Severity severity) { return std::ranges::count(findings, severity, &Finding::severity); };
    QStringList parts;
    if (const auto n = count(Severity::Stop)) parts << counted(n == 1 ? "%n stop" : "%n stops", n);
    if (const auto n = count(Severity::Care)) parts << counted(n == 1 ? "%n care" : "%n cares", n);
    if (const auto n = count(Severity::Note)) parts << counted(n == 1 ? "%n note" : "%n notes", n);
    return parts.isEmpty() ? text("nothing to mind") : parts.join(QStringLiteral(" · "));
}

QString orderSummary(const OrderOfWork& order) {
    if (order.setups == 0) return {};
    const QString setups = counted(order.setups == 1 ? "%n set-up" : "%n set-ups", order.setups);
    return order.setups == order.lowerBound ? setups + text(", the fewest") : setups;
}

}  // namespace kerfwall
