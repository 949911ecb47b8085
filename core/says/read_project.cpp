// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/project_text.h"
#include "core/says/read_parts.h"
#include "core/says/words.h"

namespace kerfwall {

namespace {

constexpr int kVersion = 1;
constexpr std::size_t kMostLines = 500;
constexpr std::size_t kMostCutouts = 100;
constexpr std::string_view kFormat = "kerfwall-project";

void readFormat(ObjectReader& fields) {
    const std::string allowed = "\"" + std::string(kFormat) + "\"";
    const Json* format = fields.require("format", allowed);
    if (format != nullptr && *format != kFormat) {
        fields.reading().refuse("/format", "is " + shown(*format) + "; allowed is " + allowed + ".");
    }
}

void readVersion(ObjectReader& fields) {
    const Json* version = fields.require("version", "a whole number, 1");
    if (version == nullptr) {
        return;
    }
    const double number = version->is_number() ? version->get<double>() : 0;
    if (number > kVersion && version->is_number_integer()) {
        fields.reading().refuse("/version",
                                "is " + shown(*version) +
                                    "; this program knows versions up to 1, so open the file with a "
                                    "later one.");
    } else if (number != kVersion) {
        fields.reading().refuse("/version", "is " + shown(*version) + "; allowed is the whole number 1.");
    }
}

template <typename Item>
std::vector<Item> readList(ObjectReader& fields, std::string_view key, std::string_view what,
                           Item (*read)(const Json&, const std::string&, Reading&),
                           std::size_t most = kMaxBytes) {
    std::vector<Item> items;
    for (const auto& [value, pointer] : fields.list(key, what, most)) {
        items.push_back(read(*value, pointer, fields.reading()));
    }
    return items;
}

template <typename Target, typename Item>
void readObject(ObjectReader& fields, std::string_view key, Target& target,
                Item (*read)(const Json&, const std::string&, Reading&)) {
    if (const Json* value = fields.find(key)) {
        target = read(*value, fields.pointerOf(key), fields.reading());
    }
}

void readAllLimits(ObjectReader& fields, Project& project) {
    const Json* value = fields.find("limits");
    if (value == nullptr) {
        return;
    }
    if (!value->is_object()) {
        fields.reading().refuse("/limits",
                                "is " + shown(*value) + "; limits are an object, by finding code.");
        return;
    }
    for (const auto& [code, limits] : value->items()) {
        project.limits.emplace(code, readLimits(limits, pointerTo("/limits", code), fields.reading()));
    }
}

Project readFields(ObjectReader& fields) {
    Project project;
    fields.text("title", project.title);
    fields.text("notes", project.notes);
    fields.word("units", kUnitWords, project.units);
    if (const Json* panel = fields.require("panel", "an object with width, height and thickness")) {
        project.panel = readPanel(*panel, "/panel", fields.reading());
    }
    project.lines = readList(fields, "lines", "lines", readLine, kMostLines);
    project.cutouts = readList(fields, "cutouts", "cutouts", readCutout, kMostCutouts);
    fields.number("kerf_depth", {"a kerf's depth", 0, 60, " mm (the panel's thickness)", true, true},
                  project.kerfDepth);
    readObject(fields, "bench", project.bench, readBench);
    readObject(fields, "use", project.use, readUse);
    project.clampHoles = readList(fields, "clamp_holes", "clamp holes", readClampHole);
    project.fences = readList(fields, "fences", "fences", readFence);
    readObject(fields, "workpiece", project.workpiece, readWorkpiece);
    readObject(fields, "printing", project.printing, readPrinting);
    readObject(fields, "plan", project.plan, readPlanWish);
    readAllLimits(fields, project);
    project.record = readList(fields, "record", "records", readRecord);
    project.unknown = fields.unknown();
    return project;
}

}  // namespace

std::expected<Project, Refusal> readProject(std::string_view text) {
    const std::expected<Json, Refusal> tree = readJson(text);
    if (!tree) {
        return std::unexpected(tree.error());
    }
    Reading reading;
    ObjectReader fields(*tree, "", "a project", reading);
    readFormat(fields);
    readVersion(fields);
    if (!reading.isSound()) {
        return std::unexpected(*reading.refusal());
    }
    Project project = readFields(fields);
    if (reading.isSound()) {
        checkSizes(project, reading);
        checkReferences(project, reading);
    }
    if (!reading.isSound()) {
        return std::unexpected(*reading.refusal());
    }
    return project;
}

}  // namespace kerfwall
