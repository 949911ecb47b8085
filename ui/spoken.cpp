// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spoken.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "core/drawing/fence_section.h"
#include "core/drawing/hole_section.h"
#include "ui/card_texts.h"
#include "ui/fence_entry.h"
#include "ui/paper_setting.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

QString text(const char* source) { return QCoreApplication::translate("kerfwall::Spoken", source); }
QString plain(const std::string& s) { return QString::fromStdString(s); }

QString sideText(Side side) { return side == Side::Left ? text("left") : text("right"); }

QString markText(const LineMark& mark, Units units) {
    return text("%1 at %2").arg(edgeText(mark.mark.edge), lengthUnitFor(mark.mark.at, units));
}

QString lineInWords(const SolvedLine& line, Units units) {
    QStringList ends;
    for (const LineMark& mark : line.marks) ends << markText(mark, units);
    QString words = text("Line %1 from %2.").arg(plain(line.id), ends.join(text(" to ")));
    if (!line.cut) return words + text(" A mark only, not cut.");
    if (line.kerfs.empty()) return words + text(" It bounds no cutout yet: no kerf.");
    for (const Kerf& kerf : line.kerfs) {
        words += text(" Kerf %1 wide, %2 deep on its %3, %4.")
                     .arg(lengthUnitFor(kerf.width, units), lengthUnitFor(kerf.depth, units), sideText(kerf.side),
                          kerf.stopped ? text("stopped") : text("through"));
    }
    return words;
}

QString cornerInWords(const Corner& corner, Units units) {
    const QString between = text("%1 and %2").arg(plain(corner.first), plain(corner.second));
    QString words;
    if (corner.boreRadius) words += text(" Corner of %1 bored with radius %2.").arg(between, lengthUnitFor(*corner.boreRadius, units));
    if (corner.drill) words += text(" Relief hole of %1 at the corner of %2.").arg(lengthUnitFor(corner.drill->diameter, units), between);
    return words;
}

QString cutoutInWords(const SolvedCutout& cutout, Units units) {
    QStringList walls;
    for (const Wall& wall : cutout.walls) {
        if (!walls.contains(plain(wall.line))) walls << plain(wall.line);
    }
    const Box box = cutout.opening.bounds;
    QString words = text("Cutout %1, %2, between lines %3.")
                        .arg(plain(cutout.id), cutout.open ? text("open to the edge") : text("closed"),
                             walls.join(QStringLiteral(", ")));
    if (cutout.opening.loops.empty()) return words + text(" The trimming bit does not fit.");
    words += text(" Opening in the template %1 by %2.")
                 .arg(lengthUnitFor(box.high.x - box.low.x, units), lengthUnitFor(box.high.y - box.low.y, units));
    for (const Corner& corner : cutout.corners) words += cornerInWords(corner, units);
    if (cutout.work.loops.empty()) return words;
    const Box work = cutout.work.bounds;
    return words + text(" It cuts %1 by %2 in the work.")
                       .arg(lengthUnitFor(work.high.x - work.low.x, units), lengthUnitFor(work.high.y - work.low.y, units));
}

QString fenceInWords(const Fence& fence, Units units) {
    return text("%1 along %2, its face %3 from it, from %4 to %5, %6 wide and %7 high, on the %8.")
        .arg(fence.kind == FenceKind::Stop ? text("A stop") : text("A fence"), alongText(fence.along), lengthUnitFor(fence.offset, units),
             lengthUnitFor(fence.from, units), lengthUnitFor(fence.to, units), lengthUnitFor(fence.width, units),
             lengthUnitFor(fence.height, units), fence.face == Face::Back ? text("back") : text("layout face"));
}

QString runInWords(const SectionRun& run, Units units) {
    const QString from = lengthUnitFor(run.from, units), to = lengthUnitFor(run.to, units);
    switch (run.kind) {
        case SectionRun::Kind::Wood: return text("wood from %1 to %2").arg(from, to);
        case SectionRun::Kind::Kerf:
            return text("kerf of line %1 from %2 to %3, %4 deep").arg(plain(run.line), from, to, lengthUnitFor(run.depth, units));
        case SectionRun::Kind::Opening: return text("opening from %1 to %2").arg(from, to);
    }
    return {};
}

QString breakInWords(const HoleBreak& at, Units units) {
    const QString from = lengthUnitFor(at.from, units), to = lengthUnitFor(at.to, units);
    switch (at.into) {
        case HoleBreak::Into::Opening: return text(" It comes through into the opening from %1 to %2.").arg(from, to);
        case HoleBreak::Into::Kerf: return text(" A kerf runs into it from %1 to %2.").arg(from, to);
        case HoleBreak::Into::Face: break;
    }
    return at.top < 0 ? text(" It comes through the layout face.") : text(" It comes through the back.");
}

QString holeAtCutInWords(const Session& session, std::size_t index, const CuttingLine& cut) {
    const Project& project = session.project();
    const Units units = project.units;
    const ClampHole& hole = project.clampHoles[index];
    const HoleSection shown = holeSection(project, session.solved(), hole, cut);
    const double above = shown.axis - hole.diameter / 2;
    const double below = project.panel.thickness - shown.axis - hole.diameter / 2;
    QString words = (shown.cut ? text("Clamp hole %1 is cut") : text("Clamp hole %1 lies hidden")).arg(index + 1);
    words += shown.lying ? text(" along its length from %1 to %2").arg(lengthUnitFor(shown.mouth, units), lengthUnitFor(shown.point, units))
                         : text(" end on at %1").arg(lengthUnitFor(shown.mouth, units));
    words += text(": %1 across, its axis %2 below the layout face, %3 of wood above and %4 below.")
                 .arg(lengthUnitFor(hole.diameter, units), lengthUnitFor(shown.axis, units),
                      lengthUnitFor(std::max(0.0, above), units), lengthUnitFor(std::max(0.0, below), units));
    for (const HoleBreak& at : shown.breaks) words += breakInWords(at, units);
    return words;
}

}  // namespace

QString planInWords(const Session& session) {
    const Project& project = session.project();
    const Units units = project.units;
    QStringList words;
    words << text("Panel %1 wide, %2 high, %3 thick; reference edge: %4.")
                 .arg(lengthUnitFor(project.panel.width, units), lengthUnitFor(project.panel.height, units),
                      lengthUnitFor(project.panel.thickness, units), edgeText(project.panel.referenceEdge));
    if (session.solved().lines.empty()) words << text("No lines yet.");
    for (const SolvedLine& line : session.solved().lines) words << lineInWords(line, units);
    for (const SolvedCutout& cutout : session.solved().cutouts) words << cutoutInWords(cutout, units);
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) {
        const ClampHole& hole = project.clampHoles[i];
        words << text("Clamp hole %1: %2 at %3, %4 across, %5 deep.")
                     .arg(i + 1)
                     .arg(edgeText(hole.edge), lengthUnitFor(hole.at, units), lengthUnitFor(hole.diameter, units),
                          lengthUnitFor(hole.depth, units));
    }
    for (const Fence& fence : project.fences) words << fenceInWords(fence, units);
    if (project.workpiece) words << text("The outline of the work is drawn.");
    for (const CutDirection direction : kCutDirections) {
        if (!session.isCutShown(direction)) continue;
        const QString at = lengthUnitFor(session.cut(direction).at, units);
        words << (direction == CutDirection::Level ? text("Cut level for the side view %1 above the bottom edge.")
                                                   : text("Cut upright for the side view %1 from the left edge."))
                     .arg(at);
    }
    words << text("To mind: %1.").arg(findingSummary(session.findings()));
    for (const CardRow::Text& row : findingTexts(session.findings())) words << row.heading + QStringLiteral(". ") + row.whole;
    return words.join(QLatin1Char('\n'));
}

QString sideViewInWords(const Session& session, CutDirection direction) {
    const Project& project = session.project();
    const Units units = project.units;
    const CuttingLine& cut = session.cut(direction);
    const bool level = direction == CutDirection::Level;
    QStringList runs;
    for (const SectionRun& run : sectionAt(project, session.solved(), cut)) runs << runInWords(run, units);
    const QString at = lengthUnitFor(cut.at, units);
    QStringList words;
    words << (level ? text("Cut %1 above the bottom edge, from left to right: %2.") : text("Cut %1 from the left edge, from bottom to top: %2."))
                 .arg(at, runs.join(QStringLiteral("; ")));
    const double web = project.panel.thickness - session.solved().kerfDepth;
    words << text("Panel %1 thick; kerfs %2 deep leave a web of %3.")
                 .arg(lengthUnitFor(project.panel.thickness, units), lengthUnitFor(session.solved().kerfDepth, units),
                      lengthUnitFor(web, units));
    for (const FenceSection& fence : fenceSections(project, session.solved(), cut)) {
        words << text("Fence %1 is cut from %2 to %3.").arg(fence.index + 1).arg(lengthUnitFor(fence.from, units), lengthUnitFor(fence.to, units));
    }
    for (std::size_t i = 0; i < project.clampHoles.size(); ++i) words << holeAtCutInWords(session, i, cut);
    return words.join(QLatin1Char('\n'));
}

QString stepInWords(const Session& session, std::size_t index) {
    const WorkStep& step = session.order().steps.at(index);
    QStringList words;
    for (const SettingFigure& figure : settingFigures(session.project(), session.solved(), step)) {
        words << QStringList{figure.caption, figure.value, figure.unit}.join(QLatin1Char(' ')).trimmed();
    }
    words += lieWords(step);
    QString all = words.isEmpty() ? QString() : words.join(QStringLiteral(", ")) + QStringLiteral(". ");
    all += plain(step.text);
    if (!step.because.empty()) all += QLatin1Char(' ') + plain(step.because);
    for (const std::string& caution : step.cautions) all += QLatin1Char(' ') + plain(caution);
    return all;
}

}  // namespace kerfwall
