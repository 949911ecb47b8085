// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/says/json_tree.h"

#include <algorithm>
#include <optional>
#include <unordered_set>
#include <vector>

namespace kerfwall {

namespace {

constexpr std::size_t kShownBytes = 60;

bool isContinuation(char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; }

// Length of the well-formed UTF-8 sequence at the front of `text`, 0 for none (RFC 3629).
std::size_t sequenceLength(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(0);
    if (lead < 0x80) {
        return 1;
    }
    const std::size_t size = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || text.size() < size ||
        !std::ranges::all_of(text.substr(1, size - 1), isContinuation)) {
        return 0;
    }
    const bool overlong = (lead == 0xE0 && byte(1) < 0xA0) || (lead == 0xF0 && byte(1) < 0x90);
    const bool surrogate = lead == 0xED && byte(1) > 0x9F;
    const bool beyond = lead == 0xF4 && byte(1) > 0x8F;
    return overlong || surrogate || beyond ? 0 : size;
}

std::optional<std::size_t> firstBadByte(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t size = sequenceLength(text.substr(at));
        if (size == 0) {
            return at;
        }
        at += size;
    }
    return std::nullopt;
}

std::string placeOf(std::string_view text, std::size_t byte) {
    const std::string_view before = text.substr(0, std::min(byte, text.size()));
    const auto line = 1 + std::ranges::count(before, '\n');
    const std::size_t lineStart = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    return "byte " + std::to_string(before.size()) + " (line " + std::to_string(line) + ", column " +
           std::to_string(before.size() - lineStart + 1) + ")";
}

// Builds the tree from the parser's events and refuses what a tree could not show any more.
class TreeBuilder {
  public:
    explicit TreeBuilder(std::string_view text) : m_text(text) {}

    bool null() { return add(nullptr); }
    bool boolean(bool value) { return add(value); }
    bool number_integer(Json::number_integer_t value) { return add(value); }
    bool number_unsigned(Json::number_unsigned_t value) { return add(value); }
    bool number_float(Json::number_float_t value, const std::string&) { return add(value); }
    bool string(std::string& value) { return add(std::move(value)); }
    bool binary(Json::binary_t&) { return false; }

    bool start_object(std::size_t) { return open(Json::object()); }
    bool end_object() { return close(); }
    bool start_array(std::size_t) { return open(Json::array()); }
    bool end_array() { return close(); }

    bool key(std::string& name) {
        Level& level = m_levels.back();
        level.key = name;
        if (!level.keys.insert(name).second) {
            return refuse("is given twice in one object; each key may stand once.");
        }
        return true;
    }

    bool parse_error(std::size_t byte, const std::string&, const nlohmann::detail::exception& error) {
        constexpr int kNumberTooLarge = 406;
        const std::size_t at = byte == 0 ? 0 : byte - 1;
        if (error.id == kNumberTooLarge) {
            return refuse("is a number too large for any length, just before " + placeOf(m_text, byte) + ".");
        }
        if (at >= m_text.size()) {
            return refuse("ends at " + placeOf(m_text, at) + ", before the JSON is complete.");
        }
        return refuse("is not JSON (RFC 8259) at " + placeOf(m_text, at) + notFinite(at));
    }

    Json tree;
    std::optional<Refusal> refusal;

  private:
    struct Level {
        Json* value;
        std::string key;
        std::unordered_set<std::string> keys;
    };

    [[nodiscard]] std::string pointer() const {
        std::string place;
        for (const Level& level : m_levels) {
            if (level.value->is_array()) {
                place = pointerTo(place, level.value->size() - (&level == &m_levels.back() ? 0 : 1));
            } else if (!level.keys.empty()) {
                place = pointerTo(place, level.key);
            }
        }
        return place;
    }

    // NaN and infinity are the mistakes a number-writing program makes; name them.
    [[nodiscard]] std::string notFinite(std::size_t at) const {
        const std::size_t from = at < 8 ? 0 : at - 8;
        const std::string_view near = m_text.substr(from, 24);
        for (const std::string_view word : {"NaN", "nan", "Infinity", "inf"}) {
            if (near.find(word) != std::string_view::npos) {
                return ": " + std::string(word) + " is no number here; every number is finite.";
            }
        }
        return "; put right what stands there, or save the project again.";
    }

    bool refuse(std::string sentence) {
        refusal = Refusal{pointer(), std::move(sentence)};
        return false;
    }

    Json* place(Json value) {
        if (m_levels.empty()) {
            tree = std::move(value);
            return &tree;
        }
        Level& level = m_levels.back();
        if (level.value->is_array()) {
            level.value->push_back(std::move(value));
            return &level.value->back();
        }
        // Known not to be there yet, so the linear search of a keyed insert is spared.
        return &level.value->get_ref<Json::object_t&>().emplace_back(level.key, std::move(value)).second;
    }

    bool add(Json value) {
        place(std::move(value));
        return true;
    }

    bool open(Json value) {
        if (m_levels.size() == kMaxNesting) {
            return refuse("is nested deeper than " + std::to_string(kMaxNesting) + " levels.");
        }
        m_levels.push_back({place(std::move(value)), {}, {}});
        return true;
    }

    bool close() {
        m_levels.pop_back();
        return true;
    }

    std::string_view m_text;
    std::vector<Level> m_levels;
};

}  // namespace

std::string pointerTo(const std::string& pointer, std::string_view key) {
    std::string place = pointer + "/";
    for (const char c : key) {
        place += c == '~' ? "~0" : c == '/' ? "~1" : std::string(1, c);
    }
    return place;
}

std::string pointerTo(const std::string& pointer, std::size_t index) {
    return pointer + "/" + std::to_string(index);
}

std::string shown(const Json& value) {
    if (value.is_object()) {
        return "an object";
    }
    if (value.is_array()) {
        return value.empty() ? "an empty list" : "a list of " + std::to_string(value.size());
    }
    std::string text = value.dump();
    if (text.size() <= kShownBytes) {
        return text;
    }
    std::size_t end = kShownBytes;
    while (end > 0 && isContinuation(text[end])) {
        --end;
    }
    return text.substr(0, end) + "\u2026";
}

std::expected<Json, Refusal> readJson(std::string_view text) {
    if (text.size() > kMaxBytes) {
        return std::unexpected(Refusal{"", "is " + std::to_string(text.size()) +
                                               " bytes long; a project has at most " +
                                               std::to_string(kMaxBytes) + "."});
    }
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) {
        return std::unexpected(Refusal{"", "is empty at byte 0; a project is one JSON object."});
    }
    if (const auto bad = firstBadByte(text)) {
        return std::unexpected(Refusal{"", "is not UTF-8 at " + placeOf(text, *bad) + "; save it as UTF-8."});
    }
    TreeBuilder builder(text);
    if (!Json::sax_parse(text.begin(), text.end(), &builder)) {
        return std::unexpected(builder.refusal.value_or(Refusal{"", "is not JSON."}));
    }
    return std::move(builder.tree);
}

}  // namespace kerfwall
