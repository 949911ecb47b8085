// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <tuple>

#include "core/says/read_parts.h"
#include "core/says/words.h"

namespace kerfwall {

namespace {

enum class LaidBy { Offset, Angle, Points, Marks, Mirror };
constexpr Words<LaidBy, 5> kLaidByWords{{{"offset", LaidBy::Offset},
                                         {"angle", LaidBy::Angle},
                                         {"points", LaidBy::Points},
                                         {"marks", LaidBy::Marks},
                                         {"mirror", LaidBy::Mirror}}};
constexpr std::size_t kLongestId = 24;
constexpr std::string_view kLineName = "a line's id";
constexpr std::string_view kBaseName = "an edge's name or a line's id";
constexpr Range kBoreRadius{"a bore's radius", 0.5, 300};
constexpr Range kCornerRadius{"a corner's radius", 0, 10000};

bool isIdLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_';
}

LineId readLineId(ObjectReader& fields) {
    constexpr std::string_view allowed = "1 to 24 letters, digits, - or _";
    LineId id = fields.text("id", allowed);
    if (id.size() > kLongestId || !std::ranges::all_of(id, isIdLetter)) {
        fields.reading().refuse(fields.pointerOf("id"),
                                "is " + shown(Json(id)) + "; a line's id is " + std::string(allowed) + ".");
    }
    if (isEdgeName(id)) {
        fields.reading().refuse(fields.pointerOf("id"),
                                "is the name of an edge, " + shown(Json(id)) + "; a line needs another id.");
    }
    return id;
}

// A place object and the fields inside it that nobody knows; `unknown` mirrors the nesting.
struct Laid {
    ObjectReader& fields;
    Json unknown = Json::object();

    void keep(std::string_view key, const Json& inner) {
        if (!inner.empty()) {
            unknown[std::string(key)] = inner;
        }
    }
};

ByOffset readOffset(Laid& laid) {
    ByOffset place;
    place.from = baseOf(laid.fields.text("from", kBaseName));
    place.distance = laid.fields.number("distance", kDistance);
    return place;
}

std::variant<Point, CrossingOf> readThrough(Laid& laid) {
    constexpr std::string_view allowed = "a point [x, y] or {\"crossing\": [id, id]}";
    const Json* value = laid.fields.require("through", allowed);
    if (value == nullptr) {
        return Point{};
    }
    const std::string pointer = laid.fields.pointerOf("through");
    if (value->is_array()) {
        return readPoint(*value, pointer, laid.fields.reading());
    }
    if (!value->is_object()) {
        laid.fields.reading().refuse(pointer,
                                     "is " + shown(*value) + "; allowed is " + std::string(allowed) + ".");
        return Point{};
    }
    ObjectReader crossing(*value, pointer, "a crossing", laid.fields.reading());
    CrossingOf of;
    if (const Json* pair = crossing.require("crossing", "a list of two lines' ids")) {
        std::tie(of.first, of.second) = readPair(*pair, crossing.pointerOf("crossing"), crossing.reading());
    }
    laid.keep("through", crossing.unknownFields());
    return of;
}

ByAngle readAngled(Laid& laid) {
    ByAngle place;
    place.from = baseOf(laid.fields.text("from", kBaseName));
    place.angle = laid.fields.number("angle", kAngle);
    place.through = readThrough(laid);
    return place;
}

Point readPointField(Laid& laid, std::string_view key) {
    const Json* value = laid.fields.require(key, "a point [x, y]");
    return value == nullptr ? Point{} : readPoint(*value, laid.fields.pointerOf(key), laid.fields.reading());
}

ByPoints readPoints(Laid& laid) {
    const ByPoints place{readPointField(laid, "p"), readPointField(laid, "q")};
    if (place.p == place.q) {
        laid.fields.reading().refuse(laid.fields.pointerOf("q"),
                                     "is the same point as p; a line needs two different points.");
    }
    return place;
}

EdgeMark readMark(Laid& laid, std::string_view key) {
    EdgeMark mark;
    if (const Json* value = laid.fields.require(key, "an edge mark {\"edge\", \"at\"}")) {
        ObjectReader fields(*value, laid.fields.pointerOf(key), "an edge mark", laid.fields.reading());
        mark.edge = readEdge(fields, "edge");
        mark.at = fields.number("at", kDistance);
        laid.keep(key, fields.unknownFields());
    }
    return mark;
}

ByMarks readMarks(Laid& laid) {
    const ByMarks place{readMark(laid, "a"), readMark(laid, "b")};
    if (place.a == place.b) {
        laid.fields.reading().refuse(laid.fields.pointerOf("b"),
                                     "is the same mark as a; a line needs two different marks.");
    }
    return place;
}

ByMirror readMirror(Laid& laid) {
    ByMirror place;
    place.of = laid.fields.text("of", kLineName);
    const std::string about =
        laid.fields.text("about", "\"upright-centre\", \"level-centre\" or a line's id");
    if (about == "upright-centre") {
        place.about = Centre::Upright;
    } else if (about == "level-centre") {
        place.about = Centre::Level;
    } else {
        place.about = about;
    }
    return place;
}

Place readPlaceBy(LaidBy by, Laid& laid) {
    switch (by) {
        case LaidBy::Offset:
            return readOffset(laid);
        case LaidBy::Angle:
            return readAngled(laid);
        case LaidBy::Points:
            return readPoints(laid);
        case LaidBy::Marks:
            return readMarks(laid);
        case LaidBy::Mirror:
            break;
    }
    return readMirror(laid);
}

void readPlace(const Json& value, const std::string& pointer, Reading& reading, LayoutLine& line) {
    ObjectReader fields(value, pointer, "a line's place", reading);
    Laid laid{fields};
    const LaidBy by = fields.word("by", kLaidByWords);
    if (!reading.isSound()) {
        return;
    }
    line.place = readPlaceBy(by, laid);
    Json unknown = fields.unknownFields();
    unknown.update(laid.unknown);
    line.placeUnknown = unknownText(unknown);
}

BoredCorner readBoredCorner(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a bored corner", reading);
    BoredCorner corner;
    if (const Json* pair = fields.require("between", "a list of two lines' ids")) {
        std::tie(corner.first, corner.second) = readPair(*pair, fields.pointerOf("between"), reading);
    }
    corner.radius = fields.number("bore_radius", kBoreRadius);
    corner.unknown = fields.unknown();
    return corner;
}

Wanted readWanted(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "what is wanted", reading);
    Wanted wanted;
    if (const Json* outline = fields.require("outline", "a list of at least 3 points")) {
        wanted.outline = readOutline(*outline, fields.pointerOf("outline"), reading);
    }
    fields.number("corner_radius", kCornerRadius, wanted.cornerRadius);
    wanted.unknown = fields.unknown();
    return wanted;
}

}  // namespace

bool isEdgeName(const std::string& name) {
    return std::ranges::any_of(kEdgeWords, [&](const auto& word) { return word.first == name; });
}

Base baseOf(const std::string& name) {
    for (const auto& [word, edge] : kEdgeWords) {
        if (word == name) {
            return edge;
        }
    }
    return name;
}

Edge readEdge(ObjectReader& fields, std::string_view key) { return fields.word(key, kEdgeWords); }

LayoutLine readLine(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a line", reading);
    LayoutLine line;
    line.id = readLineId(fields);
    if (const Json* place = fields.require("place", "an object that says how the line is laid out")) {
        readPlace(*place, fields.pointerOf("place"), reading, line);
    }
    fields.flag("cut", line.cut);
    fields.word("drawn_on", kDrawnOnWords, line.drawnOn);
    if (fields.has("saw")) {
        line.saw = fields.text("saw", "a saw's id");
    }
    fields.word("extent", kExtentWords, line.extent);
    line.unknown = fields.unknown();
    return line;
}

Cutout readCutout(const Json& value, const std::string& pointer, Reading& reading) {
    ObjectReader fields(value, pointer, "a cutout", reading);
    Cutout cutout;
    cutout.id = fields.text("id", "a text that names the cutout");
    if (fields.require("seeds", "a list of one or more points") != nullptr) {
        for (const auto& [seed, place] : fields.list("seeds", "seeds", kMaxBytes)) {
            cutout.seeds.push_back(readPoint(*seed, place, reading));
        }
        if (cutout.seeds.empty()) {
            reading.refuse(fields.pointerOf("seeds"), "has no point; a cutout needs at least one seed.");
        }
    }
    for (const auto& [corner, place] : fields.list("corners", "bored corners", kMaxBytes)) {
        cutout.corners.push_back(readBoredCorner(*corner, place, reading));
    }
    if (const Json* wanted = fields.find("wanted")) {
        cutout.wanted = readWanted(*wanted, fields.pointerOf("wanted"), reading);
    }
    cutout.unknown = fields.unknown();
    return cutout;
}

}  // namespace kerfwall
