// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/json_text.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <cmath>
#include <cstdint>

namespace kerfwall {

namespace {

constexpr double kExactInteger = 9007199254740992;  // 2^53: doubles hold every integer below
constexpr std::size_t kColumns = 100;               // a value that fits into these stays on one line

void writeDouble(double value, std::string& text) {
    assert(std::isfinite(value));
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value);
    const std::string_view number(digits.data(), static_cast<std::size_t>(end.ptr - digits.data()));
    text += number;
    if (number.find_first_of(".e") == std::string_view::npos) {
        text += ".0";
    }
}

void writePlain(const Json& value, std::string& text) {
    if (value.is_number_float()) {
        writeDouble(value.get<double>(), text);
    } else {
        text += value.dump(-1, ' ', false, Json::error_handler_t::replace);
    }
}

// On one line; false as soon as it does not fit into `columns`.
bool writeOnOneLine(const Json& value, std::size_t columns, std::string& text) {
    if (!value.is_structured()) {
        writePlain(value, text);
        return text.size() <= columns;
    }
    text += value.is_object() ? "{" : "[";
    bool first = true;
    for (const auto& [key, entry] : value.items()) {
        text += first ? "" : ", ";
        first = false;
        if (value.is_object()) {
            writePlain(Json(key), text);
            text += ": ";
        }
        if (!writeOnOneLine(entry, columns, text)) {
            return false;
        }
    }
    text += value.is_object() ? "}" : "]";
    return text.size() <= columns;
}

void newLine(std::size_t indent, std::string& text) {
    text += "\n";
    text.append(2 * indent, ' ');
}

void write(const Json& value, std::size_t indent, std::string& text) {
    if (!value.is_structured()) {
        writePlain(value, text);
        return;
    }
    const std::size_t columns = kColumns - std::min(kColumns, 2 * indent);
    if (std::string oneLine; indent > 0 && writeOnOneLine(value, columns, oneLine)) {
        text += oneLine;
        return;
    }
    text += value.is_object() ? "{" : "[";
    bool first = true;
    for (const auto& [key, entry] : value.items()) {
        text += first ? "" : ",";
        first = false;
        newLine(indent + 1, text);
        if (value.is_object()) {
            writePlain(Json(key), text);
            text += ": ";
        }
        write(entry, indent + 1, text);
    }
    newLine(indent, text);
    text += value.is_object() ? "}" : "]";
}

}  // namespace

std::string jsonText(const Json& value) {
    std::string text;
    write(value, 0, text);
    return text + "\n";
}

Json plainNumber(double value) {
    const bool whole = std::trunc(value) == value && std::abs(value) < kExactInteger;
    if (whole && !(value == 0 && std::signbit(value))) {
        return static_cast<std::int64_t>(value);
    }
    return value;
}

}  // namespace kerfwall
