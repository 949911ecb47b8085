// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hole_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "core/shop/hole_wood.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

QString text(const char* source) { return QCoreApplication::translate("kerfwall::Hole", source); }

/// The least of the wood in those directions; nullptr where there is none.
const WoodLeft* least(const std::vector<WoodLeft>& wood, std::initializer_list<WoodAt> places) {
    const WoodLeft* found = nullptr;
    for (const WoodLeft& each : wood) {
        const bool counts = std::ranges::find(places, each.at) != places.end();
        if (counts && (!found || each.left < found->left)) found = &each;
    }
    return found;
}

QString besideText(const WoodLeft& wood, const QString& size) {
    const QString what = QString::fromStdString(wood.what);
    switch (wood.at) {
        case WoodAt::BesideCutout: return text("%1 beside it to %2").arg(size, cutoutText(wood.what));
        case WoodAt::BesideHole: return text("%1 beside it to clamp hole %2").arg(size, what);
        default: return text("%1 beside it to the corner").arg(size);
    }
}

QString aheadText(const WoodLeft& wood, const QString& size) {
    if (wood.at == WoodAt::AheadEdge) return text("%1 ahead to the opposite edge").arg(size);
    return wood.left > 0 ? text("%1 ahead to %2").arg(size, cutoutText(wood.what)) : text("runs into %1").arg(cutoutText(wood.what));
}

QString kerfText(const WoodLeft& wood, const QString& size) {
    const QString what = QString::fromStdString(wood.what);
    return wood.left > 0 ? text("%1 to kerf %2 over it").arg(size, what) : text("kerf %2 cuts %1 into it").arg(size, what);
}

}  // namespace

QString holeNote(const Project& project, const Solved& solved, std::size_t hole) {
    if (hole >= project.clampHoles.size()) return {};
    const ClampHole& of = project.clampHoles[hole];
    const auto size = [&](double mm) { return sizeFor(std::abs(mm), project.units); };
    const std::vector<WoodLeft> wood = woodRound(project, solved, hole);
    QStringList lines{text("%1 on the %2").arg(size(of.at), edgeCountText(of.edge)),
                      text("%1 across, %2 deep").arg(size(of.diameter), size(of.depth))};
    const double above = least(wood, {WoodAt::Above})->left, below = least(wood, {WoodAt::Below})->left;
    lines << (above < 0 || below < 0 ? text("wider than the panel's wood there")
                                     : text("wood: %1 above, %2 below").arg(size(above), size(below)));
    if (const WoodLeft* beside = least(wood, {WoodAt::EdgeStart, WoodAt::EdgeEnd, WoodAt::BesideCutout, WoodAt::BesideHole})) {
        lines << (beside->left < 0 ? text("breaks out beside it") : besideText(*beside, size(beside->left)));
    }
    if (const WoodLeft* ahead = least(wood, {WoodAt::AheadCutout, WoodAt::AheadEdge})) lines << aheadText(*ahead, size(ahead->left));
    if (const WoodLeft* kerf = least(wood, {WoodAt::UnderKerf})) lines << kerfText(*kerf, size(kerf->left));
    return lines.join(QLatin1Char('\n'));
}

QString holeKindText(const HoleKind& kind, Units units) {
    const QString across = sizeFor(kind.diameter, units);
    return kind.clamp ? text("clamp %1: %2 across, %3 deep").arg(*kind.clamp + 1).arg(across, sizeFor(kind.depth, units))
                      : text("drill of %1").arg(across);
}

}  // namespace kerfwall
