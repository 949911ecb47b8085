// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <iterator>

#include "core/geometry/work_rectangle.h"
#include "ui/sheet_form.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kFurthest = 10000;  // mm, as the project file says
constexpr double kLeastSide = 1;
constexpr double kThickest = 500;

/// What the grain can be said to be, degrees.
constexpr double kGrains[] = {0, 90, 45, -45};

/// The rectangle as it is, or the panel where there is none yet.
Box boxOf(const Project& project) {
    return workBounds(project).value_or(Box{{0, 0}, {project.panel.width, project.panel.height}});
}

SheetForm::LengthRow row(const QString& label, const QString& name) {
    SheetForm::LengthRow made;
    made.label = label;
    made.objectName = name;
    made.step = SheetForm::tr("Set the workpiece");
    made.low = -kFurthest;
    made.high = kFurthest;
    made.range = SheetForm::tr("The workpiece lies within 10000 mm of the panel.");
    made.mayBeEmpty = true;
    made.emptyMeans = SheetForm::tr("none");
    return made;
}

SheetForm::LengthRow sideRow(const QString& label, const QString& name, double Point::*axis) {
    SheetForm::LengthRow made = row(label, name);
    made.low = kLeastSide;
    made.range = SheetForm::tr("A workpiece is 1 to 10000 mm long and wide.");
    made.read = [axis](const Project& project) -> std::optional<double> {
        const auto box = workBounds(project);
        if (!box) return std::nullopt;
        return box->high.*axis - box->low.*axis;
    };
    made.write = [axis](Project& project, std::optional<double> value) {
        if (!value) return project.workpiece.reset();
        Box box = boxOf(project);
        box.high.*axis = box.low.*axis + *value;
        project = withWorkRectangle(project, box);
    };
    return made;
}

SheetForm::LengthRow placeRow(const QString& label, const QString& name, double Point::*axis) {
    SheetForm::LengthRow made = row(label, name);
    made.read = [axis](const Project& project) -> std::optional<double> {
        const auto box = workBounds(project);
        if (!box) return std::nullopt;
        return box->low.*axis;
    };
    made.write = [axis](Project& project, std::optional<double> value) {
        if (!value || !workBounds(project)) return;
        Point low = workBounds(project)->low;
        low.*axis = *value;
        project = withWorkAt(project, low);
    };
    return made;
}

SheetForm::LengthRow thicknessRow() {
    SheetForm::LengthRow made = row(SheetForm::tr("Thickness"), QStringLiteral("workThickness"));
    made.low = kLeastSide;
    made.high = kThickest;
    made.range = SheetForm::tr("A workpiece is 1 to 500 mm thick.");
    made.emptyMeans = SheetForm::tr("not said");
    made.read = [](const Project& project) { return project.workpiece ? project.workpiece->thickness : std::nullopt; };
    made.write = [](Project& project, std::optional<double> value) {
        if (project.workpiece) project.workpiece->thickness = value;
    };
    return made;
}

std::optional<double> grainOf(const Project& project) { return project.workpiece ? project.workpiece->grain : std::nullopt; }

SheetForm::ChoiceRow grainRow() {
    SheetForm::ChoiceRow made;
    made.label = SheetForm::tr("Grain runs");
    made.objectName = QStringLiteral("workGrain");
    made.step = SheetForm::tr("Say how the grain runs");
    made.options = [](const Project& project) {
        const auto grain = grainOf(project);
        QStringList options{SheetForm::tr("not said"), SheetForm::tr("to the right"), SheetForm::tr("up"), SheetForm::tr("rising to the right"),
                            SheetForm::tr("falling to the right")};
        return options << (grain ? SheetForm::tr("at %1").arg(angleFor(*grain)) : SheetForm::tr("as turned with the work"));
    };
    made.read = [](const Project& project) {
        const auto grain = grainOf(project);
        if (!grain) return 0;
        const auto* found = std::ranges::find(kGrains, *grain);
        return static_cast<int>(found - std::begin(kGrains)) + 1;
    };
    made.write = [](Project& project, int option) {
        if (!project.workpiece) return;
        if (option == 0) project.workpiece->grain.reset();
        else if (option <= static_cast<int>(std::size(kGrains))) project.workpiece->grain = kGrains[option - 1];
    };
    return made;
}

}  // namespace

SheetForm* makeWorkpieceForm(Session& session, QWidget* parent) {
    auto* form = new SheetForm(SheetForm::tr("Workpiece"), session, parent);
    form->addLength(sideRow(SheetForm::tr("Width"), QStringLiteral("workWidth"), &Point::x), isWorkRectangle);
    form->addLength(sideRow(SheetForm::tr("Height"), QStringLiteral("workHeight"), &Point::y), isWorkRectangle);
    form->addLength(placeRow(SheetForm::tr("Begins right of the left edge"), QStringLiteral("workLeft"), &Point::x));
    form->addLength(placeRow(SheetForm::tr("Begins above the bottom edge"), QStringLiteral("workBottom"), &Point::y));
    form->addLength(thicknessRow());
    form->addChoice(grainRow());
    return form;
}

}  // namespace kerfwall
