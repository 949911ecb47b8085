// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/card_texts.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

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
    if (!finding.cutout.empty()) return text("cutout %1").arg(plain(finding.cutout));
    return {};
}

QString taskText(const WorkStep& step) {
    switch (step.task) {
        case Task::Mark: return text("Mark the edges");
        case Task::Bore: return text("Bore");
        case Task::Kerf: return text("Saw kerf %1").arg(namesOf(step.lines));
        case Task::Drill: return text("Drill");
        case Task::Rough: return text("Saw out the waste");
        case Task::Trim: return text("Trim");
        case Task::Hole: return text("Clamp holes");
        case Task::Fence: return text("Fences");
        case Task::Hand: return text("By hand");
        case Task::Label: return text("Label");
    }
    return {};
}

QString boundsText(const Outline& outline, Units units) {
    const double width = outline.bounds.high.x - outline.bounds.low.x;
    const double height = outline.bounds.high.y - outline.bounds.low.y;
    return text("%1 × %2").arg(lengthFor(width, units), lengthFor(height, units));
}

/// One row of the sizes and the lines it is measured between.
struct SizeRow {
    QString heading;
    QString text;
    std::vector<LineId> lines;
};

void addSizes(std::vector<SizeRow>& rows, const Project& project, const SolvedCutout& cutout) {
    const Units units = project.units;
    const QString id = plain(cutout.id);
    if (cutout.opening.loops.empty()) {
        rows.push_back({text("%1: the trimming bit does not fit").arg(id), {}, {}});
    } else {
        rows.push_back({text("%1 in the template").arg(id), boundsText(cutout.opening, units), {}});
    }
    for (const FacingSize& size : cutout.sizes) {
        const QString between = text("between %1 and %2").arg(plain(size.first), plain(size.second));
        const QString value = size.atEnds ? text("%1 to %2").arg(lengthFor(size.atEnds->first, units),
                                                                  lengthFor(size.atEnds->second, units))
                                          : lengthFor(size.distance, units);
        rows.push_back({between, value, {size.first, size.second}});
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
                        text("%1 × %2").arg(lengthFor(box.high.x - box.low.x, units), lengthFor(box.high.y - box.low.y, units)),
                        {}});
    }
}

std::vector<SizeRow> sizeRows(const Project& project, const Solved& solved) {
    std::vector<SizeRow> rows;
    for (const SolvedCutout& cutout : solved.cutouts) addSizes(rows, project, cutout);
    return rows;
}

}  // namespace

std::vector<CardRow::Text> findingTexts(const std::vector<Finding>& findings) {
    std::vector<CardRow::Text> rows;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const Finding& finding = findings[i];
        const QString place = placeOf(finding);
        const QString heading = severityText(finding.severity) + (place.isEmpty() ? QString() : QStringLiteral(": ") + place);
        rows.push_back({kindOf(finding.severity), QString::number(i + 1), heading, plain(finding.text)});
    }
    return rows;
}

std::vector<CardRow::Text> stepTexts(const OrderOfWork& order) {
    std::vector<CardRow::Text> rows;
    for (const WorkStep& step : order.steps) {
        QString body = plain(step.text);
        for (const std::string& caution : step.cautions) body += QStringLiteral(" ") + plain(caution);
        rows.push_back({CardRow::Kind::Step, QString::number(step.number), taskText(step), body});
    }
    return rows;
}

std::vector<CardRow::Text> sizeTexts(const Project& project, const Solved& solved) {
    std::vector<CardRow::Text> rows;
    for (const SizeRow& row : sizeRows(project, solved)) {
        rows.push_back({CardRow::Kind::Size, row.text, row.heading, {}});
    }
    return rows;
}

std::vector<LineId> sizeLines(const Project& project, const Solved& solved, std::size_t row) {
    const std::vector<SizeRow> rows = sizeRows(project, solved);
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
