// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper_facts.h"

#include <algorithm>

#include "ui/paper_setting.h"
#include "ui/paper_text.h"

namespace kerfwall {
namespace {

QString faceWords(Face face) { return face == Face::Back ? PaperWords::tr("back") : PaperWords::tr("layout face"); }

/// The smallest arc of the opening in the work: what its inside corners keep.
std::optional<double> smallestRadius(const Outline& outline) {
    std::optional<double> smallest;
    for (const OutlineLoop& loop : outline.loops) {
        for (const OutlinePiece& piece : loop) {
            if (piece.isArc && (!smallest || piece.radius < *smallest)) smallest = piece.radius;
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
    return PaperWords::tr("Panel %1 \u00d7 %2 \u00d7 %3, %4")
        .arg(lengthWords(project, panel.width), lengthWords(project, panel.height),
             lengthWords(project, panel.thickness), QString::fromStdString(panel.material));
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
        QString fact = PaperWords::tr("%1: %2 \u00d7 %3")
                           .arg(id, lengthWords(project, bounds.high.x - bounds.low.x),
                                lengthWords(project, bounds.high.y - bounds.low.y));
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
