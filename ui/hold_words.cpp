// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hold_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "ui/wording.h"

namespace kerfwall {
namespace {

QString text(const char* source) { return QCoreApplication::translate("kerfwall::HoldWords", source); }
QString plain(const LineId& id) { return QString::fromStdString(id); }

bool tellsDirection(const Hold& hold) {
    switch (hold.on) {
        case HoldOn::Parallel:
        case HoldOn::Square:
        case HoldOn::WholeDegree:
        case HoldOn::HalfDegree:
        case HoldOn::Mirror: return true;
        default: return false;
    }
}

QString angleText(double angle, const Base& from) {
    return angle == 0 ? text("parallel to %1").arg(theBaseText(from)) : text("%1 to %2").arg(angleFor(angle), theBaseText(from));
}

}  // namespace

QString theBaseText(const Base& base) {
    const bool isEdge = std::holds_alternative<Edge>(base);
    return isEdge ? text("the %1").arg(baseText(base)) : baseText(base);
}

QString aboutText(const std::variant<Centre, LineId>& about) {
    const auto* centre = std::get_if<Centre>(&about);
    if (!centre) return baseText(std::get<LineId>(about));
    return *centre == Centre::Upright ? text("the upright centre line") : text("the level centre line");
}

QString holdText(const Hold& hold, double margin, Units units) {
    const QString first = plain(hold.first), second = plain(hold.second);
    switch (hold.on) {
        case HoldOn::PanelCorner: return text("from a corner of the panel");
        case HoldOn::EdgeMiddle: return text("at the middle of %1").arg(theBaseText(hold.base));
        case HoldOn::LineEnd: return text("at the end of line %1").arg(first);
        case HoldOn::Crossing: return text("through the crossing of %1 and %2").arg(first, second);
        case HoldOn::LaidPoint: return text("through a point of line %1").arg(first);
        case HoldOn::Parallel: return text("parallel to %1").arg(theBaseText(hold.base));
        case HoldOn::Square: return text("square to %1").arg(theBaseText(hold.base));
        case HoldOn::WholeDegree:
        case HoldOn::HalfDegree: return angleText(hold.angle, hold.base);
        case HoldOn::Bore: return text("tangent to the bore at %1, %2").arg(first, second);
        case HoldOn::Mirror: return text("mirror of %1 about %2").arg(first, aboutText(hold.about));
        case HoldOn::SawnCorner: return text("clears the work's sawn corner by %1").arg(lengthUnitFor(margin, units));
    }
    return {};
}

QString laidText(const LaidLine& laid, double margin, Units units) {
    QStringList lines;
    if (laid.holds.empty() || !tellsDirection(laid.holds.front())) lines << angleText(laid.angle, laid.angleFrom);
    for (const Hold& hold : laid.holds) {
        const QString words = holdText(hold, margin, units);
        if (!lines.contains(words)) lines << words;
    }
    for (const LaidEnd* end : {&laid.from, &laid.to}) {
        lines << text("%1 at the %2").arg(lengthFor(end->at, units), edgeText(end->edge));
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace kerfwall
