// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/picked.h"

#include <algorithm>

namespace kerfwall {
namespace {

template <typename Name>
bool holdsAll(const std::vector<Name>& names, const std::vector<Name>& part) {
    return std::ranges::all_of(part, [&](const Name& name) { return std::ranges::find(names, name) != names.end(); });
}

template <typename Name>
void add(std::vector<Name>& names, const std::vector<Name>& part) {
    for (const Name& name : part) {
        if (std::ranges::find(names, name) == names.end()) names.push_back(name);
    }
}

template <typename Name>
void takeAway(std::vector<Name>& names, const std::vector<Name>& part) {
    std::erase_if(names, [&](const Name& name) { return std::ranges::find(part, name) != part.end(); });
}

}  // namespace

bool holds(const Picked& picked, const Picked& part) {
    return holdsAll(picked.lines, part.lines) && holdsAll(picked.cutouts, part.cutouts) &&
           holdsAll(picked.holes, part.holes) && holdsAll(picked.fences, part.fences) &&
           (picked.workpiece || !part.workpiece);
}

Picked with(Picked picked, const Picked& part) {
    add(picked.lines, part.lines);
    add(picked.cutouts, part.cutouts);
    add(picked.holes, part.holes);
    add(picked.fences, part.fences);
    picked.workpiece = picked.workpiece || part.workpiece;
    return picked;
}

Picked without(Picked picked, const Picked& part) {
    takeAway(picked.lines, part.lines);
    takeAway(picked.cutouts, part.cutouts);
    takeAway(picked.holes, part.holes);
    takeAway(picked.fences, part.fences);
    picked.workpiece = picked.workpiece && !part.workpiece;
    return picked;
}

}  // namespace kerfwall
