// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>
#include <set>

#include "core/says/json_text.h"
#include "core/says/read_parts.h"
#include "core/says/words.h"

namespace kerfwall {

namespace {

// A line one line is laid out from, and where that is said.
struct Reference {
    LineId to;
    std::string pointer;
};

void addBase(const Base& base, const std::string& pointer, std::vector<Reference>& references) {
    if (const auto* id = std::get_if<LineId>(&base)) {
        references.push_back({*id, pointer});
    }
}

void addPair(const LineId& first, const LineId& second, const std::string& pointer,
             std::vector<Reference>& references) {
    references.push_back({first, pointerTo(pointer, std::size_t{0})});
    references.push_back({second, pointerTo(pointer, std::size_t{1})});
}

std::vector<Reference> referencesOf(const Place& place, const std::string& pointer) {
    std::vector<Reference> references;
    if (const auto* offset = std::get_if<ByOffset>(&place)) {
        addBase(offset->from, pointer + "/from", references);
    } else if (const auto* angle = std::get_if<ByAngle>(&place)) {
        addBase(angle->from, pointer + "/from", references);
        if (const auto* crossing = std::get_if<CrossingOf>(&angle->through)) {
            addPair(crossing->first, crossing->second, pointer + "/through/crossing", references);
        }
    } else if (const auto* mirror = std::get_if<ByMirror>(&place)) {
        references.push_back({mirror->of, pointer + "/of"});
        if (const auto* about = std::get_if<LineId>(&mirror->about)) {
            references.push_back({*about, pointer + "/about"});
        }
    }
    return references;
}

class ReferenceCheck {
  public:
    ReferenceCheck(const Project& project, Reading& reading) : m_project(project), m_reading(reading) {
        for (std::size_t i = 0; i < project.lines.size(); ++i) {
            m_lineIndex.emplace(project.lines[i].id, i);
        }
    }

    void run() {
        checkIds();
        checkLines();
        checkCycles();
        checkCutouts();
        checkFixtures();
        checkRecord();
    }

  private:
    void checkIds() {
        once("/lines", m_project.lines, "line", &LayoutLine::id);
        once("/cutouts", m_project.cutouts, "cutout", &Cutout::id);
        once("/clamp_holes", m_project.clampHoles, "clamp hole", &ClampHole::id);
        if (m_project.bench) {
            once("/bench/saws", m_project.bench->saws, "saw", &Saw::id);
        }
    }

    template <typename Item>
    void once(const std::string& list, const std::vector<Item>& items, const std::string& what,
              std::string Item::*id) {
        std::map<std::string, std::size_t> first;
        for (std::size_t i = 0; i < items.size(); ++i) {
            const std::string& name = items[i].*id;
            const auto [other, isNew] = first.emplace(name, i);
            if (!isNew && !name.empty()) {
                m_reading.refuse(pointerTo(list, i) + "/id", "is " + shown(Json(name)) + ", the id of " +
                                                                 what + " " + pointerTo(list, other->second) +
                                                                 " already; each " + what +
                                                                 " needs its own.");
            }
        }
    }

    void checkLine(const LineId& id, const std::string& pointer) {
        if (!m_lineIndex.contains(id)) {
            m_reading.refuse(pointer,
                             "names line " + shown(Json(id)) +
                                 ", which is not there; allowed is the id of a line in this project.");
        }
    }

    static std::string placePointer(std::size_t line) { return pointerTo("/lines", line) + "/place"; }

    void checkLines() {
        for (std::size_t i = 0; i < m_project.lines.size(); ++i) {
            const LayoutLine& line = m_project.lines[i];
            for (const Reference& reference : referencesOf(line.place, placePointer(i))) {
                if (reference.to == line.id) {
                    m_reading.refuse(reference.pointer, "makes line " + shown(Json(line.id)) +
                                                            " refer to itself; name another line.");
                }
                checkLine(reference.to, reference.pointer);
            }
            if (line.saw && findSaw(benchOf(m_project), *line.saw) == nullptr) {
                m_reading.refuse(pointerTo("/lines", i) + "/saw",
                                 "names saw " + shown(Json(*line.saw)) +
                                     ", which is not on the bench; allowed is the id of one of its saws.");
            }
        }
    }

    // Lines whose every reference is settled are settled; what is left when nothing moves is a ring,
    // or hangs on one.
    void checkCycles() {
        if (!m_reading.isSound()) {
            return;
        }
        std::vector<bool> settled(m_project.lines.size(), false);
        for (bool moved = true; moved;) {
            moved = false;
            for (std::size_t i = 0; i < settled.size(); ++i) {
                if (!settled[i] && !openReference(i, settled)) {
                    settled[i] = moved = true;
                }
            }
        }
        const auto stuck = std::ranges::find(settled, false);
        if (stuck != settled.end()) {
            refuseRing(static_cast<std::size_t>(stuck - settled.begin()), settled);
        }
    }

    [[nodiscard]] std::optional<Reference> openReference(std::size_t line,
                                                         const std::vector<bool>& settled) const {
        for (Reference& reference : referencesOf(m_project.lines[line].place, placePointer(line))) {
            if (!settled[m_lineIndex.at(reference.to)]) {
                return std::move(reference);
            }
        }
        return std::nullopt;
    }

    // From a stuck line every step leads to another stuck line, so the walk comes back to one it knows.
    void refuseRing(std::size_t start, const std::vector<bool>& settled) {
        std::set<std::size_t> seen;
        std::size_t line = start;
        while (seen.insert(line).second) {
            line = m_lineIndex.at(openReference(line, settled)->to);
        }
        const std::size_t first = line;
        const std::string pointer = openReference(first, settled)->pointer;
        std::string ring = m_project.lines[first].id;
        do {
            line = m_lineIndex.at(openReference(line, settled)->to);
            ring += " \u2192 " + m_project.lines[line].id;
        } while (line != first);
        m_reading.refuse(pointer, "makes line " + shown(Json(m_project.lines[first].id)) +
                                      " refer to itself through others (" + ring +
                                      "); lay one of them out from an edge.");
    }

    void checkCutouts() {
        for (std::size_t i = 0; i < m_project.cutouts.size(); ++i) {
            std::set<std::pair<LineId, LineId>> pairs;
            const auto& corners = m_project.cutouts[i].corners;
            for (std::size_t k = 0; k < corners.size(); ++k) {
                const std::string pointer = pointerTo(pointerTo("/cutouts", i) + "/corners", k) + "/between";
                checkLine(corners[k].first, pointerTo(pointer, std::size_t{0}));
                checkLine(corners[k].second, pointerTo(pointer, std::size_t{1}));
                if (!pairs.insert(std::minmax(corners[k].first, corners[k].second)).second) {
                    m_reading.refuse(pointer, "names the corner of " + corners[k].first + " and " +
                                                  corners[k].second +
                                                  " a second time; one bore a corner is allowed.");
                }
            }
        }
    }

    void checkFixtures() {
        for (std::size_t i = 0; i < m_project.fences.size(); ++i) {
            if (const auto* along = std::get_if<LineId>(&m_project.fences[i].along)) {
                checkLine(*along, pointerTo("/fences", i) + "/along");
            }
        }
    }

    void checkRecordPair(const std::optional<std::pair<LineId, LineId>>& pair, const std::string& pointer) {
        if (pair) {
            checkLine(pair->first, pointerTo(pointer, std::size_t{0}));
            checkLine(pair->second, pointerTo(pointer, std::size_t{1}));
        }
    }

    void checkRecord() {
        for (std::size_t i = 0; i < m_project.record.size(); ++i) {
            const Record& record = m_project.record[i];
            const std::string pointer = pointerTo("/record", i);
            if (record.line) {
                checkLine(record.line->first, pointer + "/line");
            }
            checkRecordPair(record.between, pointer + "/between");
            checkRecordPair(record.bore, pointer + "/bore");
        }
    }

    const Project& m_project;
    Reading& m_reading;
    std::map<LineId, std::size_t> m_lineIndex;
};

}  // namespace

void checkReferences(const Project& project, Reading& reading) { ReferenceCheck(project, reading).run(); }

void checkSizes(const Project& project, Reading& reading) {
    const Range depth{
        "a kerf's depth", 0, project.panel.thickness, " mm (the panel's thickness)", true, true};
    if (project.kerfDepth && !depth.holds(*project.kerfDepth)) {
        reading.refuse("/kerf_depth",
                       "is " + shown(plainNumber(*project.kerfDepth)) + "; " + depth.sentence() + ".");
    }
    const double kerfDepth = kerfDepthOf(project);
    const auto& saws = benchOf(project).saws;
    for (std::size_t i = 0; i < saws.size(); ++i) {
        if (saws[i].blade <= 2 * kerfDepth) {
            reading.refuse(pointerTo("/bench/saws", i) + "/blade",
                           "is " + shown(plainNumber(saws[i].blade)) +
                               "; a blade's diameter is more than twice the kerf's depth of " +
                               shown(plainNumber(kerfDepth)) + " mm.");
        }
    }
}

}  // namespace kerfwall
