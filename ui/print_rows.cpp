// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print_rows.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/says/paper_name.h"
#include "core/says/words.h"
#include "ui/printers.h"
#include "ui/sheet_form.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kNarrowestRoll = 150, kWidestRoll = 2000;  // mm, as the project file has it
const std::string kUsualRoll = "roll-610";
constexpr double kMostMargin = 60, kMostOverlap = 60;  // mm: more leaves nothing of the small papers

QString text(const char* source) { return QCoreApplication::translate("kerfwall::PrintRows", source); }

/// Makes a change of how the paper is used; a correction stays with the paper's sides where it comes to lie the other way.
void withPaperTurned(Project& project, const PrintRows& rows, const std::function<void()>& change) {
    const bool layOnItsSide = liesOnItsSide(rows.laidFor(project));
    change();
    if (liesOnItsSide(rows.laidFor(project)) != layOnItsSide) std::swap(project.printing.scaleX, project.printing.scaleY);
}

ChoiceRow paperRow(const PrintRows& rows) {
    ChoiceRow row;
    row.label = text("Paper");
    row.objectName = QStringLiteral("printPaper");
    row.step = text("Choose the paper");
    row.options = [](const Project&) {
        QStringList words;
        for (const std::string_view name : kPaperNames) words << paperWords(std::string(name));
        return words << paperWords(kUsualRoll);
    };
    row.read = [](const Project& project) {
        const auto* at = std::ranges::find(kPaperNames, project.printing.paper);
        return static_cast<int>(at - kPaperNames.begin());  // the last: a roll
    };
    row.write = [rows](Project& project, int option) {
        const auto index = static_cast<std::size_t>(option);
        withPaperTurned(project, rows, [&] { project.printing.paper = index < kPaperNames.size() ? std::string(kPaperNames[index]) : kUsualRoll; });
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
        withPaperTurned(project, rows, [&] { rows.wish.lie = static_cast<PaperLie>(option); });
        rows.wished();
    };
    return row;
}

/// A length that may turn the paper.
LengthRow sheetLengthRow(const PrintRows& rows, double Printing::*length) {
    LengthRow row;
    row.read = [length](const Project& project) { return std::optional(project.printing.*length); };
    row.write = [rows, length](Project& project, std::optional<double> value) {
        withPaperTurned(project, rows, [&] { project.printing.*length = *value; });
    };
    return row;
}

LengthRow marginRow(const PrintRows& rows) {
    LengthRow row = sheetLengthRow(rows, &Printing::margin);
    row.label = text("Margin");
    row.objectName = QStringLiteral("printMargin");
    row.step = text("Set the margin");
    row.high = kMostMargin;
    row.range = text("Margins are up to 60 mm wide.");
    row.refusal = [rows](const Project& project) {
        const double least = leastMarginOf(rows.printer, rows.laidFor(project));
        if (project.printing.margin >= least) return QString();
        return text("Printers leave the edge of the paper blank: the margin is at least %1.").arg(lengthUnitFor(least, project.units));
    };
    return row;
}

LengthRow overlapRow(const PrintRows& rows) {
    LengthRow row = sheetLengthRow(rows, &Printing::overlap);
    row.label = text("Overlap of sheets");
    row.objectName = QStringLiteral("printOverlap");
    row.step = text("Set the overlap");
    row.high = kMostOverlap;
    row.range = text("Sheets overlap by 0 to 60 mm.");
    return row;
}

ChoiceRow faceRow() {
    ChoiceRow row;
    row.label = text("Glued on the");
    row.objectName = QStringLiteral("printFace");
    row.step = text("Choose the pattern's face");
    row.options = [](const Project&) { return QStringList{text("layout face"), text("back, mirrored")}; };
    row.read = [](const Project& project) { return project.printing.face == Face::Back ? 1 : 0; };
    row.write = [](Project& project, int option) { project.printing.face = option == 1 ? Face::Back : Face::Layout; };
    return row;
}

ChoiceRow hairlineRow() {
    ChoiceRow row;
    row.label = text("Narrow lines");
    row.objectName = QStringLiteral("printHairline");
    row.step = text("Choose the lines' width");
    row.options = [](const Project&) { return QStringList{text("0.35 mm"), text("0.13 mm hairline")}; };
    row.read = [](const Project& project) { return project.printing.hairline ? 1 : 0; };
    row.write = [](Project& project, int option) { project.printing.hairline = option == 1; };
    return row;
}

LengthRow rollRow() {
    LengthRow row;
    row.label = text("The roll is wide");
    row.objectName = QStringLiteral("printRoll");
    row.step = text("Set the roll's width");
    row.low = kNarrowestRoll;
    row.high = kWidestRoll;
    row.range = text("Rolls are 150 to 2000 mm wide.");
    row.read = [](const Project& project) { return rollWidth(project.printing.paper); };
    row.write = [](Project& project, std::optional<double> value) {
        project.printing.paper = "roll-" + QString::number(*value, 'g', 8).toStdString();
    };
    return row;
}

bool isTiled(const Project& project) { return project.printing.paper != "panel"; }
bool isOnRoll(const Project& project) { return rollWidth(project.printing.paper).has_value(); }
bool isSheets(const Project& project) { return isTiled(project) && !isOnRoll(project); }

}  // namespace

QString paperWords(const std::string& name) {
    if (name == "panel") return text("as the panel");
    if (rollWidth(name)) return text("a roll");
    const QString plain = QString::fromStdString(name);
    if (plain.contains(QLatin1Char('-'))) return plain.toUpper().replace(QLatin1Char('-'), QLatin1Char(' '));
    return plain.startsWith(QLatin1Char('a')) && plain.size() == 2 ? plain.toUpper() : plain;
}

void addPrintRows(SheetForm& form, const PrintRows& rows) {
    form.addChoice(paperRow(rows));
    form.addLength(rollRow(), isOnRoll);
    form.addChoice(lieRow(rows), isSheets);
    form.addLength(marginRow(rows), isTiled);
    form.addLength(overlapRow(rows), isTiled);
    form.addChoice(faceRow());
    form.addChoice(hairlineRow());
}

void takeKeptScale(Project& project, const Paper& laid, const QString& printer) {
    const auto kept = keptScale(printer);
    if (!kept) return;
    const PrintScale scale = scaleOnPaper(*kept, laid);
    project.printing.scaleX = scale.x;
    project.printing.scaleY = scale.y;
}

QString sheetsInWords(const Project& project, const Sheets& sheets) {
    const int count = static_cast<int>(sheets.sheets.size());
    if (sheets.paper.name == "panel") {
        return text("One sheet as large as the panel, %1.").arg(extentFor({{0, 0}, {sheets.paper.width, sheets.paper.height}}, project.units));
    }
    const QString paper = paperWords(project.printing.paper);
    const QString lies = liesOnItsSide(sheets.paper) ? text("on its side") : text("upright");
    if (rollWidth(project.printing.paper)) {
        const double piece = std::max(sheets.paper.width, sheets.paper.height) == *rollWidth(project.printing.paper)
                                 ? std::min(sheets.paper.width, sheets.paper.height)
                                 : std::max(sheets.paper.width, sheets.paper.height);
        const QString length = lengthUnitFor(piece, project.units);
        return count == 1 ? text("One piece of the roll, %1 long.").arg(length) : text("%1 pieces of the roll, each %2 long.").arg(count).arg(length);
    }
    if (count == 1) return text("One sheet of %1, %2.").arg(paper, lies);
    const int blank = sheets.columns * sheets.rows - count;
    const QString left = blank == 0 ? QString() : text(", %1 of them blank and left out").arg(blank);
    const QString words = text("%1 sheets of %2, %3: %4 across and %5 up%6, as they lie on the plan.")
                              .arg(count).arg(paper, lies).arg(sheets.columns).arg(sheets.rows).arg(left);
    if (project.printing.overlap > 0) return words;
    return words + QLatin1Char(' ') + text("Without overlap they are butted, and no mark stands on both of two neighbours.");
}

}  // namespace kerfwall
