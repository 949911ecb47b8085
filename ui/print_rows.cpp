// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print_rows.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/says/words.h"
#include "ui/printers.h"
#include "ui/sheet_form.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kMostMargin = 60, kMostOverlap = 60;  // mm: more leaves nothing of the small papers

QString text(const char* source) { return QCoreApplication::translate("kerfwall::PrintRows", source); }

ChoiceRow paperRow(const PrintRows& rows) {
    ChoiceRow row;
    row.label = text("Paper");
    row.objectName = QStringLiteral("printPaper");
    row.step = text("Choose the paper");
    row.options = [](const Project&) {
        QStringList words;
        for (const std::string_view name : kPaperNames) words << paperWords(std::string(name));
        return words;
    };
    row.read = [](const Project& project) {
        const auto* at = std::ranges::find(kPaperNames, project.printing.paper);
        return at == kPaperNames.end() ? -1 : static_cast<int>(at - kPaperNames.begin());
    };
    row.write = [rows](Project& project, int option) {
        project.printing.paper = kPaperNames.at(static_cast<std::size_t>(option));
        takeKeptScale(project, rows.wish, rows.printer);
    };
    return row;
}

ChoiceRow lieRow(const PrintRows& rows) {
    ChoiceRow row;
    row.label = text("It lies");
    row.objectName = QStringLiteral("printLie");
    row.step = text("Lay the paper");
    row.options = [](const Project&) { return QStringList{text("as fewest sheets do"), text("upright"), text("on its side")}; };
    row.read = [rows](const Project&) { return static_cast<int>(rows.wish.lie); };
    row.write = [rows](Project& project, int option) {
        rows.wish.lie = static_cast<PaperLie>(option);
        takeKeptScale(project, rows.wish, rows.printer);
        rows.wished();
    };
    return row;
}

LengthRow marginRow(const PrintRows& rows) {
    LengthRow row;
    row.label = text("Margin");
    row.objectName = QStringLiteral("printMargin");
    row.step = text("Set the margin");
    row.high = kMostMargin;
    row.range = text("Margins are up to 60 mm wide.");
    row.read = [](const Project& project) { return std::optional(project.printing.margin); };
    row.write = [](Project& project, std::optional<double> value) { project.printing.margin = *value; };
    row.refusal = [rows](const Project& project) {
        const double least = leastMarginOf(rows.printer, printPaper(project, rows.wish));
        if (project.printing.margin >= least) return QString();
        return text("Printers leave the edge of the paper blank: the margin is at least %1.").arg(lengthUnitFor(least, project.units));
    };
    return row;
}

LengthRow overlapRow() {
    LengthRow row;
    row.label = text("Overlap of sheets");
    row.objectName = QStringLiteral("printOverlap");
    row.step = text("Set the overlap");
    row.high = kMostOverlap;
    row.range = text("Sheets overlap by 0 to 60 mm.");
    row.read = [](const Project& project) { return std::optional(project.printing.overlap); };
    row.write = [](Project& project, std::optional<double> value) { project.printing.overlap = *value; };
    return row;
}

bool isTiled(const Project& project) { return project.printing.paper != "panel"; }

}  // namespace

QString paperWords(const std::string& name) {
    if (name == "panel") return text("as the panel");
    const QString plain = QString::fromStdString(name);
    return plain.startsWith(QLatin1Char('a')) && plain.size() == 2 ? plain.toUpper() : plain;
}

void addPrintRows(SheetForm& form, const PrintRows& rows) {
    form.addChoice(paperRow(rows));
    form.addChoice(lieRow(rows), isTiled);
    form.addLength(marginRow(rows), isTiled);
    form.addLength(overlapRow(), isTiled);
}

void takeKeptScale(Project& project, const PrintWish& wish, const QString& printer) {
    const auto kept = keptScale(printer);
    if (!kept) return;
    const PrintScale scale = scaleOnPaper(*kept, printPaper(project, wish));
    project.printing.scaleX = scale.x;
    project.printing.scaleY = scale.y;
}

QString sheetsInWords(const Project& project, const Sheets& sheets) {
    const int count = static_cast<int>(sheets.sheets.size());
    if (sheets.paper.name == "panel") return text("One sheet as large as the panel, %1.").arg(extentFor({{0, 0}, {sheets.paper.width, sheets.paper.height}}, project.units));
    const QString paper = paperWords(project.printing.paper);
    const QString lies = liesOnItsSide(sheets.paper) ? text("on its side") : text("upright");
    if (count == 1) return text("One sheet of %1, %2.").arg(paper, lies);
    return text("%1 sheets of %2, %3: %4 across and %5 up, as they lie on the plan.").arg(count).arg(paper, lies).arg(sheets.columns).arg(sheets.rows);
}

}  // namespace kerfwall
