// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "ui/bench_rows.h"
#include "ui/session.h"
#include "ui/sheet_form.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

// Ranges as the project file has them, mm.
constexpr double kLeastPanel = 10, kMostPanel = 3000;
constexpr double kLeastThickness = 3, kMostThickness = 60;
constexpr double kLeastDepth = 0.1;

SheetForm::LengthRow sizeRow(const QString& label, const QString& name, const QString& step, double Panel::*size) {
    SheetForm::LengthRow row;
    row.label = label;
    row.objectName = name;
    row.step = step;
    row.low = kLeastPanel;
    row.high = kMostPanel;
    row.range = SheetForm::tr("A panel's sides are 10 to 3000 mm long.");
    row.read = [size](const Project& project) { return std::optional(project.panel.*size); };
    row.write = [size](Project& project, std::optional<double> value) { project.panel.*size = *value; };
    return row;
}

SheetForm::LengthRow thicknessRow() {
    SheetForm::LengthRow row = sizeRow(SheetForm::tr("Thickness"), QStringLiteral("panelThickness"),
                                       SheetForm::tr("Set the thickness"), &Panel::thickness);
    row.low = kLeastThickness;
    row.high = kMostThickness;
    row.range = SheetForm::tr("A panel is 3 to 60 mm thick.");
    row.write = [](Project& project, std::optional<double> value) {
        project.panel.thickness = *value;
        // A kerf through the panel is no kerf: it is worked out anew where it no longer fits.
        if (project.kerfDepth && *project.kerfDepth >= *value) project.kerfDepth.reset();
    };
    return row;
}

SheetForm::LengthRow depthRow() {
    SheetForm::LengthRow row;
    row.label = SheetForm::tr("Kerf depth");
    row.objectName = QStringLiteral("kerfDepth");
    row.step = SheetForm::tr("Set the kerf depth");
    row.low = kLeastDepth;
    row.high = kMostThickness;
    row.range = SheetForm::tr("A kerf is more than 0 deep and less than the panel's thickness.");
    row.mayBeEmpty = true;
    row.emptyMeans = SheetForm::tr("worked out");
    row.read = [](const Project& project) { return std::optional(kerfDepthOf(project)); };
    row.write = [](Project& project, std::optional<double> value) { project.kerfDepth = value; };
    row.refusal = [](const Project& project) {
        const double depth = kerfDepthOf(project);
        if (depth >= project.panel.thickness) {
            return SheetForm::tr("A kerf is less deep than the panel's thickness of %1.")
                .arg(lengthUnitFor(project.panel.thickness, project.units));
        }
        return bladeRefusal(project);
    };
    return row;
}

TextRow titleRow() {
    TextRow row;
    row.label = SheetForm::tr("Title");
    row.objectName = QStringLiteral("projectTitle");
    row.step = SheetForm::tr("Name the template");
    row.read = [](const Project& project) { return QString::fromStdString(project.title); };
    row.write = [](Project& project, const QString& text) {
        project.title = text.trimmed().toStdString();
        return QString();
    };
    return row;
}

TextRow materialRow() {
    TextRow row;
    row.label = SheetForm::tr("Material");
    row.objectName = QStringLiteral("panelMaterial");
    row.step = SheetForm::tr("Choose the material");
    row.offered = {QStringLiteral("mdf"), QStringLiteral("hdf"), QStringLiteral("birch-plywood"), QStringLiteral("plywood"),
                   QStringLiteral("chipboard"), QStringLiteral("acrylic")};
    row.read = [](const Project& project) { return QString::fromStdString(project.panel.material); };
    row.write = [](Project& project, const QString& text) {
        const std::string id = text.trimmed().toStdString();
        if (id.empty() || !isMaterialId(id)) {
            return SheetForm::tr("A material is named by lower-case letters, digits and hyphens, like birch-plywood.");
        }
        project.panel.material = id;
        return QString();
    };
    return row;
}

TextRow notesRow() {
    TextRow row;
    row.label = SheetForm::tr("Notes");
    row.objectName = QStringLiteral("projectNotes");
    row.step = SheetForm::tr("Write the notes");
    row.hasLines = true;
    row.read = [](const Project& project) { return QString::fromStdString(project.notes); };
    row.write = [](Project& project, const QString& text) {
        project.notes = text.toStdString();
        return QString();
    };
    return row;
}

SheetForm::ChoiceRow referenceRow() {
    SheetForm::ChoiceRow row;
    row.label = SheetForm::tr("Reference edge");
    row.objectName = QStringLiteral("referenceEdge");
    row.step = SheetForm::tr("Choose the reference edge");
    row.options = [](const Project&) {
        QStringList options;
        for (const Edge edge : kEdges) options << edgeText(edge);
        return options;
    };
    row.read = [](const Project& project) { return static_cast<int>(project.panel.referenceEdge); };
    row.write = [](Project& project, int option) {
        project.panel.referenceEdge = kEdges.at(static_cast<std::size_t>(option));
    };
    return row;
}

SheetForm::ChoiceRow squareRow() {
    SheetForm::ChoiceRow row;
    row.label = SheetForm::tr("True right angle");
    row.objectName = QStringLiteral("squareCorner");
    row.step = SheetForm::tr("Choose the true corner");
    row.options = [](const Project& project) {
        // Edges run anticlockwise: each ends where the next begins.
        const QStringList corners{SheetForm::tr("bottom left"), SheetForm::tr("bottom right"), SheetForm::tr("top right"),
                                  SheetForm::tr("top left")};
        const int begins = static_cast<int>(project.panel.referenceEdge);
        return QStringList{corners[begins], corners[(begins + 1) % 4], SheetForm::tr("at both its ends"),
                           SheetForm::tr("at neither end"), SheetForm::tr("all four, measured")};
    };
    row.read = [](const Project& project) { return static_cast<int>(project.panel.squareCorner); };
    row.write = [](Project& project, int option) { project.panel.squareCorner = static_cast<SquareCorner>(option); };
    return row;
}

SheetForm::ChoiceRow preferRow() {
    SheetForm::ChoiceRow row;
    row.label = SheetForm::tr("Order of work");
    row.objectName = QStringLiteral("planPrefers");
    row.step = SheetForm::tr("Choose how the work is ordered");
    row.options = [](const Project&) {
        return QStringList{SheetForm::tr("one reference edge"), SheetForm::tr("fewest set-ups"),
                           SheetForm::tr("slanting lines seen")};
    };
    row.read = [](const Project& project) { return static_cast<int>(project.plan.prefer); };
    row.write = [](Project& project, int option) { project.plan.prefer = static_cast<Prefer>(option); };
    return row;
}

}  // namespace

SheetForm* makePanelForm(Session& session, QWidget* parent) {
    auto* form = new SheetForm(SheetForm::tr("Panel"), session, parent);
    form->addText(titleRow());
    form->addLength(sizeRow(SheetForm::tr("Width"), QStringLiteral("panelWidth"), SheetForm::tr("Set the panel's width"), &Panel::width));
    form->addLength(sizeRow(SheetForm::tr("Height"), QStringLiteral("panelHeight"), SheetForm::tr("Set the panel's height"), &Panel::height));
    form->addLength(thicknessRow());
    form->addText(materialRow());
    form->addLength(depthRow());
    form->addChoice(referenceRow());
    form->addChoice(squareRow());
    form->addChoice(preferRow());
    form->addText(notesRow());
    return form;
}

}  // namespace kerfwall
