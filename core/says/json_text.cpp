// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/json_text.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>

namespace kerfwall {

namespace {

constexpr double kExactInteger = 9007199254740992;  // 2^53
constexpr std::size_t kShortList = 8;               // values; a longer list of lists gets a line for each

void write(const Json& value, std::size_t indent, std::string& text);

void writeDouble(double value, std::string& text) {
    std::array<char, 32> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value);
    const std::string_view number(digits.data(), static_cast<std::size_t>(end.ptr - digits.data()));
    text += number;
    if (number.find_first_of(".e") == std::string_view::npos) {
        text += ".0";
    }
}

bool isPlain(const Json& value) { return !value.is_structured(); }

// [1, 2] and [[1, 2], [3, 4]] stay on one line; anything larger is spread.
bool fitsOneLine(const Json& list) {
    if (std::ranges::all_of(list, isPlain)) {
        return true;
    }
    return list.size() <= kShortList && std::ranges::all_of(list, [](const Json& entry) {
               return entry.is_array() && entry.size() <= 2 && std::ranges::all_of(entry, isPlain);
           });
}

void writeListOnOneLine(const Json& list, std::string& text) {
    text += "[";
    for (std::size_t i = 0; i < list.size(); ++i) {
        text += i == 0 ? "" : ", ";
        if (list[i].is_array()) {
            writeListOnOneLine(list[i], text);
        } else {
            write(list[i], 0, text);
        }
    }
    text += "]";
}

void newLine(std::size_t indent, std::string& text) {
    text += "\n";
    text.append(2 * indent, ' ');
}

void writeList(const Json& list, std::size_t indent, std::string& text) {
    if (fitsOneLine(list)) {
        writeListOnOneLine(list, text);
        return;
    }
    text += "[";
    for (std::size_t i = 0; i < list.size(); ++i) {
        text += i == 0 ? "" : ",";
        newLine(indent + 1, text);
        write(list[i], indent + 1, text);
    }
    newLine(indent, text);
    text += "]";
}

void writeObject(const Json& object, std::size_t indent, std::string& text) {
    if (object.empty()) {
        text += "{}";
        return;
    }
    text += "{";
    bool first = true;
    for (const auto& [key, value] : object.items()) {
        text += first ? "" : ",";
        first = false;
        newLine(indent + 1, text);
        write(Json(key), 0, text);
        text += ": ";
        write(value, indent + 1, text);
    }
    newLine(indent, text);
    text += "}";
}

void write(const Json& value, std::size_t indent, std::string& text) {
    if (value.is_object()) {
        writeObject(value, indent, text);
    } else if (value.is_array()) {
        writeList(value, indent, text);
    } else if (value.is_number_float()) {
        writeDouble(value.get<double>(), text);
    } else {
        text += value.dump(-1, ' ', false, Json::error_handler_t::replace);
    }
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
