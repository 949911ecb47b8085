// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bench_rows.h"

#include "core/says/changing_bench.h"
#include "core/says/tool_ranges.h"
#include "ui/session.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

FormRow named(const QString& label, const char* name, const QString& step) {
    return {label, QString::fromLatin1(name), step};
}

LengthRow lengthRow(const FormRow& row, const Range& range) {
    LengthRow length;
    static_cast<FormRow&>(length) = row;
    length.setRange(range);
    return length;
}

LengthRow trimRow(const QString& label, const char* name, const Range& range, double TrimBit::*size) {
    LengthRow row = lengthRow(named(label, name, SheetForm::tr("Set the trimming bit")), range);
    row.read = [size](const Project& project) { return std::optional(trimBitOf(project).*size); };
    row.write = [size](Project& project, std::optional<double> value) { ownTrimBit(project).*size = *value; };
    return row;
}

LengthRow trimDiameterRow() {
    LengthRow row = trimRow(SheetForm::tr("Trimming bit"), "trimDiameter", kBitDiameter, &TrimBit::diameter);
    row.mayBeEmpty = true;
    row.emptyMeans = SheetForm::tr("none");
    row.read = [](const Project& project) {
        const auto& bit = benchOf(project).trimBit;
        return bit ? std::optional(bit->diameter) : std::nullopt;
    };
    row.write = [](Project& project, std::optional<double> value) {
        if (value) ownTrimBit(project).diameter = *value;
        else ownBench(project).trimBit.reset();
    };
    return row;
}

ChoiceRow bearingRow() {
    ChoiceRow row;
    static_cast<FormRow&>(row) = named(SheetForm::tr("its bearing sits"), "trimBearingAt", SheetForm::tr("Set the trimming bit"));
    row.options = [](const Project&) {
        return QStringList{SheetForm::tr("at the tip"), SheetForm::tr("at the shank"), SheetForm::tr("at both")};
    };
    row.read = [](const Project& project) { return static_cast<int>(trimBitOf(project).bearingAt); };
    row.write = [](Project& project, int option) { ownTrimBit(project).bearingAt = static_cast<BearingAt>(option); };
    return row;
}

ChoiceRow trimWithRow() {
    ChoiceRow row;
    static_cast<FormRow&>(row) = named(SheetForm::tr("Trimmed with a router"), "trimWith", SheetForm::tr("Choose what trims"));
    row.options = [](const Project&) {
        return QStringList{SheetForm::tr("not said"), SheetForm::tr("held by hand"), SheetForm::tr("in a table")};
    };
    row.read = [](const Project& project) {
        const auto router = benchOf(project).trimWith;
        return router ? 1 + static_cast<int>(*router) : 0;
    };
    row.write = [](Project& project, int option) {
        auto& router = ownBench(project).trimWith;
        router = option == 0 ? std::nullopt : std::optional(static_cast<Router>(option - 1));
    };
    return row;
}

LengthRow toolRow(const FormRow& said, const Range& range, std::optional<double> Bench::*size) {
    LengthRow row = lengthRow(said, range);
    row.mayBeEmpty = true;
    row.emptyMeans = SheetForm::tr("none");
    row.read = [size](const Project& project) { return benchOf(project).*size; };
    row.write = [size](Project& project, std::optional<double> value) { ownBench(project).*size = value; };
    return row;
}

ListRow listRow(const FormRow& said, const Range& range, std::vector<double> Bench::*sizes) {
    ListRow row;
    static_cast<FormRow&>(row) = said;
    row.range = range;
    row.read = [sizes](const Project& project) { return benchOf(project).*sizes; };
    row.write = [sizes](Project& project, const std::vector<double>& all) { ownBench(project).*sizes = all; };
    return row;
}

LengthRow clampRow(const FormRow& said, const Range& range, std::size_t index, double Clamp::*size) {
    LengthRow row = lengthRow(said, range);
    row.read = [=](const Project& project) {
        const auto& clamps = benchOf(project).clamps;
        return index < clamps.size() ? std::optional(clamps[index].*size) : std::nullopt;
    };
    row.write = [=](Project& project, std::optional<double> value) { ownBench(project).clamps.at(index).*size = *value; };
    return row;
}

}  // namespace

QString bladeRefusal(const Project& project) {
    const auto fits = withBench(project, benchOf(project));
    return fits ? QString() : QString::fromStdString(fits.error());
}

QString clampHeading(const Clamp& clamp, Units units) {
    return SheetForm::tr("clamp for a hole of %1, %2 deep").arg(lengthUnitFor(clamp.hole, units), lengthUnitFor(clamp.insert, units));
}

void addTrimmingRows(SheetForm& form) {
    const RowShown isThere = [](const Project& project) { return benchOf(project).trimBit.has_value(); };
    form.addLength(trimDiameterRow());
    form.addLength(trimRow(SheetForm::tr("its bearing's length"), "trimBearing", kBearingLength, &TrimBit::bearingLength), isThere);
    form.addLength(trimRow(SheetForm::tr("its cutting length"), "trimCutting", kCuttingLength, &TrimBit::cuttingLength), isThere);
    form.addChoice(bearingRow(), isThere);
    form.addChoice(trimWithRow());
}

void addDrillRows(SheetForm& form) {
    form.addLength(toolRow(named(SheetForm::tr("Drill for relief holes"), "cornerDrill", SheetForm::tr("Set the corner drill")),
                           kDrillDiameter, &Bench::cornerDrill));
    form.addList(listRow(named(SheetForm::tr("Large drills and hole saws"), "bores", SheetForm::tr("Set the drills at hand")),
                         kDrillDiameter, &Bench::bores));
    form.addLength(toolRow(named(SheetForm::tr("Bit on the circle jig"), "circleBit", SheetForm::tr("Set the circle jig's bit")),
                           kBitDiameter, &Bench::circleBit));
    form.addLength(toolRow(named(SheetForm::tr("Router's base, across"), "routerBase", SheetForm::tr("Set the router's base")),
                           kRouterBase, &Bench::base));
    form.addList(listRow(named(SheetForm::tr("Other bits"), "benchBits", SheetForm::tr("Set the bits at hand")), kBitDiameter,
                         &Bench::bits));
    form.addList(listRow(named(SheetForm::tr("Guide bushes, outside"), "benchBushes", SheetForm::tr("Set the bushes at hand")),
                         kBushDiameter, &Bench::bushes));
}

SheetForm* makeClampForm(Session& session, std::size_t clamp, QWidget* parent) {
    auto* form = new SheetForm({}, session, parent, SheetForm::Kind::Part);
    const QString step = SheetForm::tr("Set a clamp");
    form->addLength(clampRow(named(SheetForm::tr("Hole it takes"), "clampHole", step), kDrillDiameter, clamp, &Clamp::hole));
    form->addLength(clampRow(named(SheetForm::tr("How deep it goes in"), "clampInsert", step), kLength, clamp, &Clamp::insert));
    form->addLength(clampRow(named(SheetForm::tr("How far it reaches"), "clampReach", step), kLength, clamp, &Clamp::reach));
    form->addLength(clampRow(named(SheetForm::tr("Its jaw, across"), "clampJaw", step), kLength, clamp, &Clamp::jaw));
    return form;
}

}  // namespace kerfwall
