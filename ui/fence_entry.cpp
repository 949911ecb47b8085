// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fence_entry.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>

#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kFurthest = 10000;  // mm, as the project file says

QString text(const char* source) { return QCoreApplication::translate("kerfwall::Fence", source); }

}  // namespace

QString fenceText(FenceKind kind) { return kind == FenceKind::Stop ? text("stop") : text("fence"); }

QString alongText(const Base& base) {
    return std::holds_alternative<Edge>(base) ? text("the %1").arg(baseText(base)) : baseText(base);
}

EntryField fenceKindField(FenceKind kind) {
    return {EntryField::Kind::Choice, text("as a"), {}, {text("straight fence"), text("stop")}, kind == FenceKind::Stop ? 1 : 0};
}

FenceKind fenceKindOf(int option) { return option == 1 ? FenceKind::Stop : FenceKind::Straight; }

Project withFenceKind(Project project, std::size_t fence, int option) {
    if (fence < project.fences.size()) project.fences[fence].kind = fenceKindOf(option);
    return project;
}

std::vector<EntryField> fenceFields(const Project& project, std::size_t fence) {
    if (fence >= project.fences.size()) return {};
    const Fence& of = project.fences[fence];
    using Kind = EntryField::Kind;
    return {{Kind::Length, text("Face from %1").arg(baseText(of.along)), of.offset, {}, 0},
            {Kind::Length, text("along it from"), of.from, {}, 0},
            {Kind::Length, text("to"), of.to, {}, 0},
            fenceKindField(of.kind)};
}

std::optional<Project> withFenceField(const Project& project, std::size_t fence, int field, double value) {
    if (fence >= project.fences.size() || field < 0 || field > 2 || !(std::abs(value) <= kFurthest)) return std::nullopt;
    Project next = project;
    Fence& of = next.fences[fence];
    (field == 0 ? of.offset : field == 1 ? of.from : of.to) = value;
    if (of.from == of.to) return std::nullopt;
    return next;
}

QString fenceFieldRange(int field) {
    return field == 0 ? text("A face lies up to 10 m to either side of what it runs along.")
                      : text("A fence needs a length: its ends differ, and lie within 10 m.");
}

QString fenceNote(const Project& project, const Solved& solved, const Fence& fence) {
    const auto size = [&](double mm) { return sizeFor(mm, project.units); };
    QStringList lines{text("%1 along %2").arg(fenceText(fence.kind), alongText(fence.along)),
                      text("face %1 from it, %2 to %3").arg(size(fence.offset), size(fence.from), size(fence.to)),
                      text("%1 wide, %2 high, on the %3")
                          .arg(size(fence.width), size(fence.height), fence.face == Face::Back ? text("back") : text("layout face"))};
    if (const auto gap = faceToWork(project, solved, fence)) lines << text("%1 to the cut in the work").arg(size(*gap));
    return lines.join(QLatin1Char('\n'));
}

}  // namespace kerfwall
