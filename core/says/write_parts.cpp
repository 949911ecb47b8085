// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/write_parts.h"

#include <bit>
#include <cstdint>

namespace kerfwall {

namespace {

bool sameBits(double a, double b) {
    return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b);
}

// Known fields stand as they are; where both sides have an object, their fields are joined.
void putBack(Json& object, const Json& unknown) {
    for (const auto& [key, value] : unknown.items()) {
        const auto known = object.find(key);
        if (known == object.end()) {
            object[key] = value;
        } else if (known->is_object() && value.is_object()) {
            putBack(*known, value);
        }
    }
}

Json markJson(const EdgeMark& mark) {
    ObjectWriter fields;
    fields.word("edge", kEdgeWords, mark.edge);
    fields.number("at", mark.at);
    return fields.object("");
}

Json throughJson(const std::variant<Point, CrossingOf>& through) {
    if (const auto* point = std::get_if<Point>(&through)) {
        return pointJson(*point);
    }
    const auto& crossing = std::get<CrossingOf>(through);
    ObjectWriter fields;
    fields.put("crossing", Json::array({crossing.first, crossing.second}));
    return fields.object("");
}

std::string aboutName(const std::variant<Centre, LineId>& about) {
    if (const auto* centre = std::get_if<Centre>(&about)) {
        return *centre == Centre::Upright ? "upright-centre" : "level-centre";
    }
    return std::get<LineId>(about);
}

Json placeJson(const LayoutLine& line) {
    ObjectWriter fields;
    if (const auto* offset = std::get_if<ByOffset>(&line.place)) {
        fields.put("by", "offset");
        fields.put("from", baseName(offset->from));
        fields.number("distance", offset->distance);
    } else if (const auto* angle = std::get_if<ByAngle>(&line.place)) {
        fields.put("by", "angle");
        fields.put("from", baseName(angle->from));
        fields.number("angle", angle->angle);
        fields.put("through", throughJson(angle->through));
    } else if (const auto* points = std::get_if<ByPoints>(&line.place)) {
        fields.put("by", "points");
        fields.put("p", pointJson(points->p));
        fields.put("q", pointJson(points->q));
    } else if (const auto* marks = std::get_if<ByMarks>(&line.place)) {
        fields.put("by", "marks");
        fields.put("a", markJson(marks->a));
        fields.put("b", markJson(marks->b));
    } else if (const auto* mirror = std::get_if<ByMirror>(&line.place)) {
        fields.put("by", "mirror");
        fields.put("of", mirror->of);
        fields.put("about", aboutName(mirror->about));
    }
    return fields.object(line.placeUnknown);
}

Json boredCornerJson(const BoredCorner& corner) {
    ObjectWriter fields;
    fields.put("between", Json::array({corner.first, corner.second}));
    fields.number("bore_radius", corner.radius);
    return fields.object(corner.unknown);
}

Json wantedJson(const Wanted& wanted) {
    ObjectWriter fields;
    fields.put("outline", pointsJson(wanted.outline));
    fields.number("corner_radius", wanted.cornerRadius, Wanted{}.cornerRadius);
    return fields.object(wanted.unknown);
}

}  // namespace

void ObjectWriter::put(const std::string& key, Json value) { m_object[key] = std::move(value); }

void ObjectWriter::number(const std::string& key, double value) { put(key, plainNumber(value)); }

void ObjectWriter::number(const std::string& key, double value, double absent) {
    if (!sameBits(value, absent)) {
        number(key, value);
    }
}

void ObjectWriter::number(const std::string& key, const std::optional<double>& value) {
    if (value) {
        number(key, *value);
    }
}

void ObjectWriter::filled(const std::string& key, Json object) {
    if (!object.empty()) {
        put(key, std::move(object));
    }
}

Json ObjectWriter::object(const std::string& unknown) const {
    Json object = m_object;
    if (!unknown.empty()) {
        const Json fields = Json::parse(unknown, nullptr, false);
        if (fields.is_object()) {
            putBack(object, fields);
        }
    }
    return object;
}

Json pointJson(const Point& point) { return Json::array({plainNumber(point.x), plainNumber(point.y)}); }

Json pointsJson(const std::vector<Point>& points) {
    Json list = Json::array();
    for (const Point& point : points) {
        list.push_back(pointJson(point));
    }
    return list;
}

std::string baseName(const Base& base) {
    const auto* edge = std::get_if<Edge>(&base);
    return edge != nullptr ? wordFor(kEdgeWords, *edge) : std::get<LineId>(base);
}

Json lineJson(const LayoutLine& line) {
    const LayoutLine absent;
    ObjectWriter fields;
    fields.put("id", line.id);
    fields.put("place", placeJson(line));
    fields.value("cut", line.cut, absent.cut);
    fields.word("drawn_on", kDrawnOnWords, line.drawnOn, absent.drawnOn);
    if (line.saw) {
        fields.put("saw", *line.saw);
    }
    fields.word("extent", kExtentWords, line.extent, absent.extent);
    return fields.object(line.unknown);
}

Json cutoutJson(const Cutout& cutout) {
    ObjectWriter fields;
    fields.put("id", cutout.id);
    fields.put("seeds", pointsJson(cutout.seeds));
    fields.list("corners", cutout.corners, boredCornerJson);
    if (cutout.wanted) {
        fields.put("wanted", wantedJson(*cutout.wanted));
    }
    return fields.object(cutout.unknown);
}

}  // namespace kerfwall
