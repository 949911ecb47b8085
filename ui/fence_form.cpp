// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fence_form.h"

#include "core/says/project.h"
#include "ui/selection.h"
#include "ui/session.h"
#include "ui/sheet_form.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kThinnest = 0.1, kLargest = 10000;  // mm, as the project file has them
constexpr double kDeepest = 60;                      // mm: the thickest panel

/// The fence that is picked, or nullptr.
template <typename AnyProject>
auto pickedIn(AnyProject& project, const Selection& selection) -> decltype(project.fences.data()) {
    const auto fence = selection.fence();
    return fence && *fence < project.fences.size() ? &project.fences[*fence] : nullptr;
}

SheetForm::LengthRow lengthRow(const Selection& selection, const QString& label, const QString& name, double Fence::*size) {
    SheetForm::LengthRow row;
    row.label = label;
    row.objectName = name;
    row.step = SheetForm::tr("Set the fence");
    row.low = kThinnest;
    row.high = kLargest;
    row.range = SheetForm::tr("A fence is 0.1 mm to 10 m wide and high.");
    row.read = [&selection, size](const Project& project) -> std::optional<double> {
        const Fence* fence = pickedIn(project, selection);
        return fence ? std::optional(fence->*size) : std::nullopt;
    };
    row.write = [&selection, size](Project& project, std::optional<double> value) {
        if (Fence* fence = pickedIn(project, selection)) fence->*size = *value;
    };
    return row;
}

/// A choice between two meanings of one of the fence's fields.
template <typename Meaning>
SheetForm::ChoiceRow choiceRow(const Selection& selection, const QString& label, const QString& name, Meaning Fence::*field,
                               Meaning first, Meaning second) {
    SheetForm::ChoiceRow row;
    row.label = label;
    row.objectName = name;
    row.step = SheetForm::tr("Set the fence");
    row.read = [&selection, field, second](const Project& project) {
        const Fence* fence = pickedIn(project, selection);
        return fence && fence->*field == second ? 1 : 0;
    };
    row.write = [&selection, field, first, second](Project& project, int option) {
        if (Fence* fence = pickedIn(project, selection)) fence->*field = option == 1 ? second : first;
    };
    return row;
}

/// Which way its body lies, as one sees it from what it runs along.
QStringList bodyOptions(const Project& project, const Selection& selection) {
    const Fence* fence = pickedIn(project, selection);
    if (!fence || fence->offset == 0) return {SheetForm::tr("to its left"), SheetForm::tr("to its right")};
    const bool isEdge = std::holds_alternative<Edge>(fence->along);
    const QString base = isEdge ? SheetForm::tr("the edge") : baseText(fence->along);
    const QString towards = SheetForm::tr("towards %1").arg(base), away = SheetForm::tr("away from %1").arg(base);
    return fence->offset > 0 ? QStringList{away, towards} : QStringList{towards, away};
}

}  // namespace

SheetForm* makeFenceForm(Session& session, Selection& selection, QWidget* parent) {
    auto* form = new SheetForm(SheetForm::tr("Fence or stop picked"), session, parent);
    SheetForm::ChoiceRow kind = choiceRow(selection, SheetForm::tr("Fixed as a"), QStringLiteral("fenceKind"), &Fence::kind,
                                          FenceKind::Straight, FenceKind::Stop);
    kind.options = [](const Project&) { return QStringList{SheetForm::tr("straight fence"), SheetForm::tr("stop")}; };
    form->addChoice(kind);
    form->addLength(lengthRow(selection, SheetForm::tr("Width"), QStringLiteral("fenceWidth"), &Fence::width));
    form->addLength(lengthRow(selection, SheetForm::tr("Height"), QStringLiteral("fenceHeight"), &Fence::height));
    SheetForm::LengthRow groove = lengthRow(selection, SheetForm::tr("Let in by a groove of"), QStringLiteral("fenceGroove"), &Fence::groove);
    groove.low = 0;
    groove.high = kDeepest;
    groove.range = SheetForm::tr("A groove is 0 (none) to 60 mm deep.");
    form->addLength(groove);
    SheetForm::ChoiceRow body = choiceRow(selection, SheetForm::tr("Its body lies"), QStringLiteral("fenceBody"), &Fence::body, Side::Left, Side::Right);
    body.options = [&selection](const Project& project) { return bodyOptions(project, selection); };
    form->addChoice(body);
    SheetForm::ChoiceRow face = choiceRow(selection, SheetForm::tr("Fixed to the"), QStringLiteral("fenceFace"), &Fence::face, Face::Layout, Face::Back);
    face.options = [](const Project&) { return QStringList{SheetForm::tr("layout face"), SheetForm::tr("back")}; };
    form->addChoice(face);
    QObject::connect(&selection, &Selection::changed, form, &SheetForm::refresh);
    return form;
}

}  // namespace kerfwall
