// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/line_names.h"

#include <algorithm>

#include "core/says/read_parts.h"

namespace kerfwall {
namespace {

constexpr std::size_t kLongestId = 24;

bool isIdLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_';
}

void addBase(const Base& base, std::vector<LineId>& named) {
    if (const auto* id = std::get_if<LineId>(&base)) named.push_back(*id);
}

/// Puts `to` wherever `from` is named.
struct Rename {
    const LineId& from;
    const LineId& to;

    void id(LineId& named) const {
        if (named == from) named = to;
    }
    void base(Base& named) const {
        if (auto* line = std::get_if<LineId>(&named)) id(*line);
    }
    void place(Place& place) const {
        if (auto* offset = std::get_if<ByOffset>(&place)) base(offset->from);
        if (auto* angle = std::get_if<ByAngle>(&place)) {
            base(angle->from);
            if (auto* crossing = std::get_if<CrossingOf>(&angle->through)) {
                id(crossing->first);
                id(crossing->second);
            }
        }
        if (auto* mirror = std::get_if<ByMirror>(&place)) {
            id(mirror->of);
            if (auto* about = std::get_if<LineId>(&mirror->about)) id(*about);
        }
    }
    void measure(Record& record) const {
        if (record.line) id(record.line->first);
        for (auto* pair : {&record.between, &record.bore}) {
            if (!*pair) continue;
            id((*pair)->first);
            id((*pair)->second);
        }
    }
};

}  // namespace

std::vector<LineId> linesNamedBy(const Place& place) {
    std::vector<LineId> named;
    if (const auto* offset = std::get_if<ByOffset>(&place)) addBase(offset->from, named);
    if (const auto* angle = std::get_if<ByAngle>(&place)) {
        addBase(angle->from, named);
        if (const auto* crossing = std::get_if<CrossingOf>(&angle->through)) {
            named.push_back(crossing->first);
            named.push_back(crossing->second);
        }
    }
    if (const auto* mirror = std::get_if<ByMirror>(&place)) {
        named.push_back(mirror->of);
        if (const auto* about = std::get_if<LineId>(&mirror->about)) named.push_back(*about);
    }
    return named;
}

std::set<LineId> linesLaidFrom(const Project& project, const LineId& id) {
    std::set<LineId> laid;
    for (bool grew = true; grew;) {
        grew = false;
        for (const LayoutLine& line : project.lines) {
            if (line.id == id || laid.contains(line.id)) continue;
            const auto isReached = [&](const LineId& named) { return named == id || laid.contains(named); };
            if (std::ranges::none_of(linesNamedBy(line.place), isReached)) continue;
            laid.insert(line.id);
            grew = true;
        }
    }
    return laid;
}

std::expected<Project, std::string> renamedLine(const Project& project, const LineId& from, const LineId& to) {
    if (to.empty() || to.size() > kLongestId || !std::ranges::all_of(to, isIdLetter)) {
        return std::unexpected("A line's name is 1 to 24 letters, digits, - or _, without spaces.");
    }
    if (isEdgeName(to)) return std::unexpected("\"" + to + "\" is the name of an edge; give the line another.");
    if (to != from && findLine(project, to)) {
        return std::unexpected("There is a line " + to + " already; each line has a name of its own.");
    }
    Project next = project;
    const Rename rename{from, to};
    for (LayoutLine& line : next.lines) {
        rename.id(line.id);
        rename.place(line.place);
    }
    for (Cutout& cutout : next.cutouts) {
        for (BoredCorner& corner : cutout.corners) {
            rename.id(corner.first);
            rename.id(corner.second);
        }
    }
    for (Fence& fence : next.fences) rename.base(fence.along);
    for (Record& record : next.record) rename.measure(record);
    return next;
}

}  // namespace kerfwall
