// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_facts.h"

#include <initializer_list>
#include <optional>

#include "core/drawing/drawn_size.h"
#include "ui/paper_setting.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

QString faceWords(Face face) {
    return face == Face::Back ? PaperWords::tr("back") : PaperWords::tr("layout face");
}

/// "400 × 250 × 12 mm": the unit once.
QString sizesWords(const Project& project, std::initializer_list<double> sizes) {
    QStringList words;
    for (const double size : sizes) words += QString::fromStdString(drawnSize(size, project.units));
    const bool inches = project.units == Units::Inches;
    const QString joined = words.join(QStringLiteral(" \u00d7 "));
    return inches ? PaperWords::tr("%1 in").arg(joined) : PaperWords::tr("%1 mm").arg(joined);
}

/// The smallest round of the inside corners of the opening in the work; arcs about wood that juts in are none.
std::optional<double> smallestRadius(const Outline& outline) {
    std::optional<double> smallest;
    for (const OutlineLoop& loop : outline.loops) {
        for (const OutlinePiece& piece : loop) {
            if (piece.isArc && piece.turn == Turn::Left && (!smallest || piece.radius < *smallest)) smallest = piece.radius;
        }
    }
    return smallest;
}

}  // namespace

QString titleOf(const Project& project) {
    const QString title = QString::fromStdString(project.title).simplified();
    return title.isEmpty() ? PaperWords::tr("Template") : title;
}

QString panelFact(const Project& project) {
    const Panel& panel = project.panel;
    const QString material =
        panel.material == "mdf" ? PaperWords::tr("MDF") : QString::fromStdString(panel.material);
    return PaperWords::tr("Panel %1, %2")
        .arg(sizesWords(project, {panel.width, panel.height, panel.thickness}), material);
}

QString guideFact(const Project& project, const Solved& solved) {
    const QString guide = lengthWords(project, solved.use.guide);
    const QString cutter = lengthWords(project, solved.use.cutter);
    if (project.use.byBush) return PaperWords::tr("Guide bush %1, bit %2").arg(guide, cutter);
    if (solved.use.guide == solved.use.cutter) return PaperWords::tr("Bit with bearing, %1").arg(cutter);
    return PaperWords::tr("Bearing %1, bit %2").arg(guide, cutter);
}

QStringList projectFacts(const Project& project, const Solved& solved) {
    return {PaperWords::tr("%1. Kerfs %2 deep. Trimming bit %3.")
                .arg(panelFact(project), lengthWords(project, solved.kerfDepth),
                     lengthWords(project, 2 * solved.bitRadius)),
            PaperWords::tr("In use: %1; the %2 lies on the work.")
                .arg(guideFact(project, solved), faceWords(solved.use.againstWork))};
}

QStringList workFacts(const Project& project, const Solved& solved) {
    QStringList facts;
    for (const SolvedCutout& cutout : solved.cutouts) {
        const QString id = QString::fromStdString(cutout.id);
        if (cutout.work.loops.empty()) {
            facts += PaperWords::tr("%1: nothing is cut in the work").arg(id);
            continue;
        }
        const Box& bounds = cutout.work.bounds;
        QString fact = PaperWords::tr("%1: %2").arg(
            id, sizesWords(project, {bounds.high.x - bounds.low.x, bounds.high.y - bounds.low.y}));
        if (const auto radius = smallestRadius(cutout.work)) {
            fact += PaperWords::tr(", corners of radius %1").arg(lengthWords(project, *radius));
        }
        facts += fact;
    }
    return facts;
}

QString severityWords(Severity severity) {
    if (severity == Severity::Stop) return PaperWords::tr("Stop: ");
    return severity == Severity::Care ? PaperWords::tr("Care: ") : PaperWords::tr("Note: ");
}

}  // namespace kerfwall
