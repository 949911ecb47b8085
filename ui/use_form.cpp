// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/says/tool_ranges.h"
#include "core/says/words.h"
#include "ui/bench_rows.h"
#include "ui/session.h"
#include "ui/sheet_form.h"

namespace kerfwall {
namespace {

constexpr double kLeastTool = 1, kMostTool = 100;  // mm, as the project file has them

bool isByBush(const Project& project) { return project.use.byBush; }
bool isByBearing(const Project& project) { return !project.use.byBush; }

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

/// What holds the template while it is used: from it follows how far an arm gives. Several at once come from the file alone.
SheetForm::ChoiceRow heldRow() {
    const auto kinds = [] {
        return QStringList{SheetForm::tr("not said"),        SheetForm::tr("the bottom edge"), SheetForm::tr("the right edge"), SheetForm::tr("the top edge"),
                           SheetForm::tr("the left edge"),   SheetForm::tr("its clamps"),      SheetForm::tr("the work, all over")};
    };
    SheetForm::ChoiceRow row;
    row.label = SheetForm::tr("Held by");
    row.objectName = QStringLiteral("useHeld");
    row.step = SheetForm::tr("Say what holds the template");
    row.options = [kinds](const Project& project) {
        return project.plan.held.size() > 1 ? kinds() << SheetForm::tr("several, as it is saved") : kinds();
    };
    row.read = [](const Project& project) {
        const auto& held = project.plan.held;
        if (held.size() > 1) return static_cast<int>(kHeldWords.size()) + 1;
        if (held.empty()) return 0;
        const auto at = std::ranges::find(kHeldWords, held.front(), [](const auto& word) { return word.second; });
        return static_cast<int>(at - kHeldWords.begin()) + 1;
    };
    row.write = [](Project& project, int option) {
        const auto index = static_cast<std::size_t>(option);
        if (index > kHeldWords.size()) return;
        project.plan.held.clear();
        if (index > 0) project.plan.held = {kHeldWords[index - 1].second};
    };
    return row;
}

SheetForm::LengthRow bushRow() {
    SheetForm::LengthRow row = toolRow(SheetForm::tr("Bush, outside"), QStringLiteral("bush"), SheetForm::tr("Set the bush"));
    row.read = [](const Project& project) { return project.use.bush; };
    row.write = [](Project& project, std::optional<double> value) { project.use.bush = value; };
    return row;
}

LengthRow bushLengthRow() {
    LengthRow row = toolRow(SheetForm::tr("it stands out by"), QStringLiteral("bushLength"), SheetForm::tr("Set the bush"));
    row.setRange(kBushLength);
    row.read = [](const Project& project) { return std::optional(project.use.bushLength); };
    row.write = [](Project& project, std::optional<double> value) { project.use.bushLength = *value; };
    return row;
}

LengthRow cutRow(const QString& label, const char* name, const Range& range, std::optional<double> Use::*size) {
    LengthRow row = optionalRow(toolRow(label, QString::fromLatin1(name), SheetForm::tr("Set the cut")), SheetForm::tr("not said"), size);
    row.setRange(range);
    return row;
}

/// A choice of which the first is that nothing is said.
template <typename Value>
ChoiceRow openChoice(const FormRow& said, const QStringList& options, const std::vector<Value>& values,
                     std::optional<Value> Use::*choice) {
    ChoiceRow row;
    static_cast<FormRow&>(row) = said;
    row.options = [options](const Project&) { return options; };
    row.read = [=](const Project& project) {
        const auto found = std::ranges::find(values, project.use.*choice);
        return found == values.end() ? 0 : static_cast<int>(found - values.begin()) + 1;
    };
    row.write = [=](Project& project, int option) {
        project.use.*choice = option == 0 ? std::nullopt : std::optional(values.at(static_cast<std::size_t>(option - 1)));
    };
    return row;
}

ChoiceRow bearingAtRow() {
    return openChoice<BearingAt>({SheetForm::tr("its bearing sits"), QStringLiteral("useBearingAt"), SheetForm::tr("Set the bit in use")},
                                 {SheetForm::tr("as for trimming"), SheetForm::tr("at the tip"), SheetForm::tr("at the shank"),
                                  SheetForm::tr("at both")},
                                 {BearingAt::Tip, BearingAt::Shank, BearingAt::Both}, &Use::bearingAt);
}

ChoiceRow againstRow() {
    return openChoice<Face>({SheetForm::tr("On the work lies"), QStringLiteral("againstWork"), SheetForm::tr("Choose the face on the work")},
                            {SheetForm::tr("as is usual"), SheetForm::tr("the layout face"), SheetForm::tr("the back")},
                            {Face::Layout, Face::Back}, &Use::againstWork);
}

ChoiceRow ridesRow() {
    return openChoice<bool>({SheetForm::tr("Bush or bearing rides"), QStringLiteral("inKerfs"), SheetForm::tr("Choose where it rides")},
                            {SheetForm::tr("worked out"), SheetForm::tr("clear of the kerfs"), SheetForm::tr("in the kerfs")},
                            {false, true}, &Use::inKerfs);
}

/// Cutters by their diameters; one that stays keeps its name and depth.
ListRow cuttersRow() {
    ListRow row;
    static_cast<FormRow&>(row) = {SheetForm::tr("Cutters used in turn"), QStringLiteral("useCutters"), SheetForm::tr("Set the cutters")};
    row.range = kBitDiameter;
    row.read = [](const Project& project) {
        std::vector<double> sizes;
        for (const TurnCutter& cutter : project.use.cutters) sizes.push_back(cutter.diameter);
        return sizes;
    };
    row.write = [](Project& project, const std::vector<double>& sizes) {
        std::vector<TurnCutter> before = std::move(project.use.cutters);
        project.use.cutters.clear();
        for (const double size : sizes) {
            const auto same = std::ranges::find(before, size, &TurnCutter::diameter);
            project.use.cutters.push_back(same == before.end() ? TurnCutter{size, {}, {}, {}} : *same);
            if (same != before.end()) before.erase(same);
        }
    };
    return row;
}

}  // namespace

SheetForm* makeUseForm(Session& session, QWidget* parent) {
    auto* form = new SheetForm(SheetForm::tr("Trimming bit and use"), session, parent);
    addTrimmingRows(*form);
    form->addHeading(SheetForm::tr("Use of the finished template"));
    form->addChoice(byRow());
    form->addLength(bushRow(), isByBush);
    form->addLength(bushLengthRow(), isByBush);
    form->addLength(optionalRow(toolRow(SheetForm::tr("Bit in use"), QStringLiteral("useBit"), SheetForm::tr("Set the bit")),
                                SheetForm::tr("the trimming bit"), &Use::bit));
    form->addLength(optionalRow(toolRow(SheetForm::tr("Bearing in use"), QStringLiteral("useBearing"), SheetForm::tr("Set the bearing")),
                                SheetForm::tr("as the bit"), &Use::bearing),
                    isByBearing);
    form->addChoice(bearingAtRow(), isByBearing);
    form->addChoice(routerRow());
    form->addLength(cutRow(SheetForm::tr("Cutting length in use"), "useCutting", kCuttingLength, &Use::cuttingLength));
    form->addLength(cutRow(SheetForm::tr("Depth of the last cut"), "useDepth", kCutDepth, &Use::depth));
    form->addList(cuttersRow());
    form->addChoice(againstRow());
    form->addChoice(ridesRow());
    form->addChoice(heldRow());
    return form;
}

}  // namespace kerfwall
