// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drawing/id_label.h"

#include <cmath>

#include "core/drawing/plan_parts.h"
#include "core/geometry/angle.h"
#include "core/geometry/heading_hold.h"

namespace kerfwall {
namespace {

constexpr std::size_t kShort = 3;        // letters
constexpr std::size_t kPictured = 12;
constexpr double kLetterWidth = 0.62;    // in their height
constexpr double kHalfLetter = 0.36;     // from a letter's middle down to the baseline, in its height

}  // namespace

bool isLongId(const LineId& id) { return id.size() > kShort; }

double idLength(const LineId& id) { return isLongId(id) ? kLetterWidth * kIdHeight * static_cast<double>(id.size()) : 0; }

Label idLabel(const LineId& id, const IdPlace& place) {
    const double drop = kHalfLetter * kIdHeight * place.scale;
    if (!isLongId(id)) {
        return {Ink::Text, place.at + place.away * place.scale * place.way - Point{0, drop}, id, kIdHeight, Anchor::Middle, 0, id};
    }
    const double turn = foldedAngle(degrees(std::atan2(place.way.y, place.way.x)));
    const Point reading{std::cos(radians(turn)), std::sin(radians(turn))};
    const Anchor anchor = dot(reading, place.way) > 0 ? Anchor::Left : Anchor::Right;
    return {Ink::Text, place.at + place.start * place.scale * place.way - drop * leftOf(reading), id, kIdHeight, anchor, turn, id};
}

std::string pictureId(const LineId& id) {
    if (id.size() <= kPictured) return id;
    return id.substr(0, kPictured / 2) + "\u2026" + id.substr(id.size() - (kPictured / 2 - 1));
}

}  // namespace kerfwall
