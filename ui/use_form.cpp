// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session.h"
#include "ui/sheet_form.h"

namespace kerfwall {
namespace {

constexpr double kLeastTool = 1, kMostTool = 100;  // mm, as the project file has them

bool isByBush(const Project& project) { return project.use.byBush; }
bool isByBearing(const Project& project) { return !project.use.byBush; }

/// The project's own bench from now on, with a trimming bit to be set.
TrimBit& ownTrimBit(Project& project) {
    if (!project.bench) project.bench = stockBench();
    if (!project.bench->trimBit) project.bench->trimBit = TrimBit{};
    return *project.bench->trimBit;
}

SheetForm::LengthRow toolRow(const QString& label, const QString& name, const QString& step) {
    SheetForm::LengthRow row;
    row.label = label;
    row.objectName = name;
    row.step = step;
    row.low = kLeastTool;
    row.high = kMostTool;
    row.range = SheetForm::tr("Bits, bearings and bushes are 1 to 100 mm across.");
    return row;
}

SheetForm::LengthRow trimRow(const QString& label, const QString& name, double TrimBit::*size) {
    SheetForm::LengthRow row = toolRow(label, name, SheetForm::tr("Set the trimming bit"));
    row.read = [size](const Project& project) { return std::optional(trimBitOf(project).*size); };
    row.write = [size](Project& project, std::optional<double> value) { ownTrimBit(project).*size = *value; };
    return row;
}

SheetForm::LengthRow optionalRow(SheetForm::LengthRow row, const QString& emptyMeans, std::optional<double> Use::*size) {
    row.mayBeEmpty = true;
    row.emptyMeans = emptyMeans;
    row.read = [size](const Project& project) { return project.use.*size; };
    row.write = [size](Project& project, std::optional<double> value) { project.use.*size = value; };
    return row;
}

SheetForm::ChoiceRow byRow() {
    SheetForm::ChoiceRow row;
    row.label = SheetForm::tr("The template steers");
    row.objectName = QStringLiteral("useBy");
    row.step = SheetForm::tr("Choose bearing or bush");
    row.options = [](const Project&) { return QStringList{SheetForm::tr("a bearing"), SheetForm::tr("a guide bush")}; };
    row.read = [](const Project& project) { return project.use.byBush ? 1 : 0; };
    row.write = [](Project& project, int option) {
        project.use.byBush = option == 1;
        // A bush needs a size: the first at hand, else the smallest usual one that clears the bit.
        constexpr double kUsualBush = 17;
        if (project.use.byBush && !project.use.bush) {
            const Bench& bench = benchOf(project);
            project.use.bush = bench.bushes.empty() ? kUsualBush : bench.bushes.front();
        }
    };
    return row;
}

SheetForm::ChoiceRow routerRow() {
    SheetForm::ChoiceRow row;
    row.label = SheetForm::tr("Router");
    row.objectName = QStringLiteral("router");
    row.step = SheetForm::tr("Choose the router");
    row.options = [](const Project&) { return QStringList{SheetForm::tr("held by hand"), SheetForm::tr("in a table")}; };
    row.read = [](const Project& project) { return project.use.router == Router::Table ? 1 : 0; };
    row.write = [](Project& project, int option) { project.use.router = option == 1 ? Router::Table : Router::Hand; };
    return row;
}

SheetForm::LengthRow bushRow() {
    SheetForm::LengthRow row = toolRow(SheetForm::tr("Bush, outside"), QStringLiteral("bush"), SheetForm::tr("Set the bush"));
    row.read = [](const Project& project) { return project.use.bush; };
    row.write = [](Project& project, std::optional<double> value) { project.use.bush = value; };
    return row;
}

}  // namespace

SheetForm* makeUseForm(Session& session, QWidget* parent) {
    auto* form = new SheetForm(SheetForm::tr("Trimming bit and use"), session, parent);
    form->addLength(trimRow(SheetForm::tr("Trimming bit"), QStringLiteral("trimDiameter"), &TrimBit::diameter));
    form->addLength(trimRow(SheetForm::tr("its bearing's length"), QStringLiteral("trimBearing"), &TrimBit::bearingLength));
    form->addLength(trimRow(SheetForm::tr("its cutting length"), QStringLiteral("trimCutting"), &TrimBit::cuttingLength));
    form->addChoice(byRow());
    form->addLength(bushRow(), isByBush);
    form->addLength(optionalRow(toolRow(SheetForm::tr("Bit in use"), QStringLiteral("useBit"), SheetForm::tr("Set the bit")),
                                SheetForm::tr("the trimming bit"), &Use::bit));
    form->addLength(optionalRow(toolRow(SheetForm::tr("Bearing in use"), QStringLiteral("useBearing"), SheetForm::tr("Set the bearing")),
                                SheetForm::tr("as the bit"), &Use::bearing),
                    isByBearing);
    form->addChoice(routerRow());
    return form;
}

}  // namespace kerfwall
