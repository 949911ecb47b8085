// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/wish_words.h"

#include <QCoreApplication>

#include "core/geometry/whole_step.h"
#include "ui/wording.h"

namespace kerfwall {
namespace {

constexpr double kShown = 0.01;  // mm: finer is of no use at the saw

QString text(const char* source) { return QCoreApplication::translate("kerfwall::WishWords", source); }

QString cornersText(const LaidWish& laid, Units units) {
    if (!laid.boreRadius) return text("The bit leaves corners of %1 in the work.").arg(lengthUnitFor(laid.cornerLeft, units));
    return text("Its corners are bored to a radius of %1.").arg(lengthUnitFor(*laid.boreRadius, units));
}

}  // namespace

QString laidText(const LaidWish& laid, const Project& project) {
    const Units units = project.units;
    return text("The opening in the template is %1. %2 The smallest good blank is %3.")
        .arg(blankText(laid.opening, units), cornersText(laid, units), blankText(laid.goodBlank, units));
}

QString steeringText(const Steering& steering, Units units) {
    const QString words = steering.byBush ? text("Take the bush of %1 and the bit of %2")
                                          : text("Take the bearing of %1 and the bit of %2");
    return words.arg(lengthUnitFor(steering.guide, units), lengthUnitFor(steering.cutter, units));
}

QString blankText(const Blank& blank, Units units) {
    return text("%1 × %2").arg(lengthUnitFor(stepped(blank.width, kShown), units), lengthUnitFor(stepped(blank.height, kShown), units));
}

QString panelText(const StockPanel& panel, Units units) {
    const QString words = units == Units::Inches ? text("%1 × %2 × %3 in") : text("%1 × %2 × %3 mm");
    return words.arg(sizeFor(panel.width, units), sizeFor(panel.height, units), sizeFor(panel.thickness, units));
}

QString layingStep(const Wish& wish, bool withOtherTools) {
    const bool isWindow = std::holds_alternative<WantedWindow>(wish);
    const bool areLegs = std::holds_alternative<WantedLegs>(wish);
    if (withOtherTools) {
        if (isWindow) return text("Lay a window with other tools");
        return areLegs ? text("Lay a leg frame with other tools") : text("Lay an opening with other tools");
    }
    if (isWindow) return text("Lay a window of the size wanted");
    return areLegs ? text("Lay a leg frame of the size wanted") : text("Lay an opening by its corners");
}

}  // namespace kerfwall
