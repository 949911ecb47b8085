// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/object_reader.h"

#include "core/says/json_text.h"

namespace kerfwall {

namespace {

const Json& emptyObject() {
    static const Json empty = Json::object();
    return empty;
}

std::string numberText(double value) { return plainNumber(value).dump(); }

constexpr Range kCoordinate{"a coordinate", -10000, 10000};

}  // namespace

void Reading::refuse(const std::string& pointer, std::string sentence) {
    if (!m_refusal) {
        m_refusal = Refusal{pointer, std::move(sentence)};
    }
}

bool Range::holds(double value) const {
    return (lowOpen ? value > low : value >= low) && (highOpen ? value < high : value <= high);
}

std::string Range::sentence() const {
    const std::string unitText(unit);
    std::string text = std::string(what) + " is ";
    if (lowOpen || highOpen) {
        text += (lowOpen ? "more than " : "at least ") + numberText(low) +
                (highOpen ? " and less than " : " and at most ");
        return text + numberText(high) + unitText;
    }
    return text + numberText(low) + " to " + numberText(high) + unitText;
}

ObjectReader::ObjectReader(const Json& value, std::string pointer, std::string_view what, Reading& reading)
    : m_value(value.is_object() ? value : emptyObject()), m_pointer(std::move(pointer)), m_reading(reading) {
    if (!value.is_object()) {
        reading.refuse(m_pointer, "is " + shown(value) + "; " + std::string(what) + " is an object.");
    }
}

bool ObjectReader::has(std::string_view key) const { return m_value.contains(std::string(key)); }

const Json* ObjectReader::find(std::string_view key) {
    m_known.emplace(key);
    const auto found = m_value.find(std::string(key));
    return found == m_value.end() ? nullptr : &*found;
}

const Json* ObjectReader::require(std::string_view key, std::string_view allowed) {
    const Json* value = find(key);
    if (value == nullptr) {
        m_reading.refuse(pointerOf(key), "is missing; allowed is " + std::string(allowed) + ".");
    }
    return value;
}

double ObjectReader::number(std::string_view key, const Range& range) {
    const Json* value = find(key);
    if (value == nullptr) {
        m_reading.refuse(pointerOf(key), "is missing; " + range.sentence() + ".");
        return range.low;
    }
    return readNumber(*value, pointerOf(key), range, m_reading);
}

void ObjectReader::number(std::string_view key, const Range& range, double& target) {
    if (const Json* value = find(key)) {
        target = readNumber(*value, pointerOf(key), range, m_reading);
    }
}

void ObjectReader::number(std::string_view key, const Range& range, std::optional<double>& target) {
    if (const Json* value = find(key)) {
        target = readNumber(*value, pointerOf(key), range, m_reading);
    }
}

std::string ObjectReader::text(std::string_view key, std::string_view allowed) {
    const Json* value = require(key, allowed);
    if (value == nullptr) {
        return {};
    }
    if (!value->is_string() || value->get_ref<const std::string&>().empty()) {
        m_reading.refuse(pointerOf(key),
                         "is " + shown(*value) + "; allowed is " + std::string(allowed) + ".");
        return {};
    }
    return value->get<std::string>();
}

void ObjectReader::text(std::string_view key, std::string& target) {
    const Json* value = find(key);
    if (value == nullptr) {
        return;
    }
    if (!value->is_string()) {
        m_reading.refuse(pointerOf(key), "is " + shown(*value) + "; allowed is a text in quotes.");
        return;
    }
    target = value->get<std::string>();
}

void ObjectReader::flag(std::string_view key, bool& target) {
    const Json* value = find(key);
    if (value == nullptr) {
        return;
    }
    if (!value->is_boolean()) {
        m_reading.refuse(pointerOf(key), "is " + shown(*value) + "; allowed is true or false.");
        return;
    }
    target = value->get<bool>();
}

void ObjectReader::flag(std::string_view key, std::optional<bool>& target) {
    if (has(key)) {
        flag(key, target.emplace());
    }
}

std::vector<std::pair<const Json*, std::string>> ObjectReader::list(std::string_view key,
                                                                    std::string_view what, std::size_t most) {
    const Json* value = find(key);
    if (value == nullptr) {
        return {};
    }
    const std::string pointer = pointerOf(key);
    if (!value->is_array()) {
        m_reading.refuse(pointer, "is " + shown(*value) + "; " + std::string(what) + " are a list.");
        return {};
    }
    if (value->size() > most) {
        m_reading.refuse(pointer, "is " + shown(*value) + "; " + std::string(what) + " are at most " +
                                      std::to_string(most) + ".");
        return {};
    }
    std::vector<std::pair<const Json*, std::string>> entries;
    for (std::size_t i = 0; i < value->size(); ++i) {
        entries.emplace_back(&(*value)[i], pointerTo(pointer, i));
    }
    return entries;
}

std::vector<double> ObjectReader::numbers(std::string_view key, std::string_view what, const Range& range) {
    std::vector<double> values;
    for (const auto& [value, pointer] : list(key, what, kMaxBytes)) {
        values.push_back(readNumber(*value, pointer, range, m_reading));
    }
    return values;
}

Json ObjectReader::unknownFields() const {
    Json fields = Json::object();
    for (const auto& [key, value] : m_value.items()) {
        if (!m_known.contains(key)) {
            fields.get_ref<Json::object_t&>().emplace_back(key, value);
        }
    }
    return fields;
}

std::string ObjectReader::unknown() const { return unknownText(unknownFields()); }

double readNumber(const Json& value, const std::string& pointer, const Range& range, Reading& reading) {
    if (!value.is_number()) {
        reading.refuse(pointer, "is " + shown(value) + "; " + range.sentence() + ", as a number.");
        return range.low;
    }
    const double number = value.get<double>();
    if (!range.holds(number)) {
        reading.refuse(pointer, "is " + shown(value) + "; " + range.sentence() + ".");
        return range.low;
    }
    return number;
}

Point readPoint(const Json& value, const std::string& pointer, Reading& reading) {
    if (!value.is_array() || value.size() != 2) {
        reading.refuse(pointer, "is " + shown(value) + "; a point is [x, y], in mm.");
        return {};
    }
    const double x = readNumber(value[0], pointerTo(pointer, std::size_t{0}), kCoordinate, reading);
    const double y = readNumber(value[1], pointerTo(pointer, std::size_t{1}), kCoordinate, reading);
    return {x, y};
}

std::vector<Point> readOutline(const Json& value, const std::string& pointer, Reading& reading) {
    if (!value.is_array() || value.size() < 3) {
        reading.refuse(pointer, "is " + shown(value) + "; an outline is a list of at least 3 points.");
        return {};
    }
    std::vector<Point> points;
    for (std::size_t i = 0; i < value.size(); ++i) {
        points.push_back(readPoint(value[i], pointerTo(pointer, i), reading));
    }
    return points;
}

std::pair<std::string, std::string> readPair(const Json& value, const std::string& pointer,
                                             Reading& reading) {
    if (!value.is_array() || value.size() != 2) {
        reading.refuse(pointer, "is " + shown(value) + "; allowed is a list of two lines' ids.");
        return {};
    }
    for (std::size_t i = 0; i < 2; ++i) {
        if (!value[i].is_string()) {
            reading.refuse(pointerTo(pointer, i), "is " + shown(value[i]) + "; allowed is a line's id.");
            return {};
        }
    }
    if (value[0] == value[1]) {
        reading.refuse(pointer, "names line " + shown(value[0]) + " twice; two different lines are allowed.");
    }
    return {value[0].get<std::string>(), value[1].get<std::string>()};
}

std::string unknownText(const Json& fields) { return fields.empty() ? std::string{} : fields.dump(); }

}  // namespace kerfwall
