// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spoken.h"

#include <QCoreApplication>
#include <QStringList>

#include "core/drawing/side_view.h"
#include "ui/card_texts.h"
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
    return words + text(" Opening in the template %1 by %2.")
                       .arg(lengthUnitFor(box.high.x - box.low.x, units), lengthUnitFor(box.high.y - box.low.y, units));
}

QString fenceInWords(const Fence& fence, Units units) {
    return text("%1 along the %2, its face %3 from it, from %4 to %5, %6 wide and %7 high, on the %8.")
        .arg(fence.kind == FenceKind::Stop ? text("A stop") : text("A fence"), baseText(fence.along), lengthUnitFor(fence.offset, units),
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
    words << text("To mind: %1.").arg(findingSummary(session.findings()));
    for (const CardRow::Text& row : findingTexts(session.findings())) words << row.heading + QStringLiteral(". ") + row.text;
    return words.join(QLatin1Char('\n'));
}

QString sideViewInWords(const Session& session) {
    const Project& project = session.project();
    QStringList runs;
    for (const SectionRun& run : sectionAt(project, session.solved(), session.cutHeight())) {
        runs << runInWords(run, project.units);
    }
    const double web = project.panel.thickness - session.solved().kerfDepth;
    return text("Cut %1 above the bottom edge, from left to right: %2. Kerfs %3 deep leave a web of %4.")
        .arg(lengthUnitFor(session.cutHeight(), project.units), runs.join(QStringLiteral("; ")),
             lengthUnitFor(session.solved().kerfDepth, project.units), lengthUnitFor(web, project.units));
}

}  // namespace kerfwall
