// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/typed_list.h"

#include "core/says/length_text.h"

namespace kerfwall {
namespace {

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view kSpaces = " \t\n";
    const std::size_t from = text.find_first_not_of(kSpaces);
    if (from == std::string_view::npos) return {};
    return text.substr(from, text.find_last_not_of(kSpaces) - from + 1);
}

std::string ordinal(std::size_t number) {
    const bool teen = number % 100 / 10 == 1;
    const char* ending = teen              ? "th"
                         : number % 10 == 1 ? "st"
                         : number % 10 == 2 ? "nd"
                         : number % 10 == 3 ? "rd"
                                            : "th";
    return std::to_string(number) + ending;
}

std::unexpected<std::string> refused(std::size_t number, std::string_view part, const std::string& why) {
    return std::unexpected("The " + ordinal(number) + " size, \"" + std::string(part) + "\": " + why);
}

}  // namespace

std::expected<std::vector<double>, std::string> readLengths(std::string_view text, Units units, const Range& range) {
    std::vector<double> lengths;
    if (trimmed(text).empty()) return lengths;
    while (true) {
        const std::size_t end = text.find(';');
        const std::string_view part = trimmed(text.substr(0, end));
        const bool isLast = end == std::string_view::npos;
        // A semicolon at the end ends the last size.
        if (isLast && part.empty() && !lengths.empty()) return lengths;
        const auto length = readLength(part, units);
        if (!length) return refused(lengths.size() + 1, part, length.error());
        if (!range.holds(*length)) return refused(lengths.size() + 1, part, range.sentence() + ".");
        lengths.push_back(*length);
        if (isLast) return lengths;
        text.remove_prefix(end + 1);
    }
}

}  // namespace kerfwall
