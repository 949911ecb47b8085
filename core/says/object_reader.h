// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/geometry/point.h"
#include "core/says/json_tree.h"
#include "core/says/range.h"

namespace kerfwall {

/// The first refusal met while a tree is read; later ones follow from it and are dropped.
class Reading {
  public:
    void refuse(const std::string& pointer, std::string sentence);
    [[nodiscard]] const std::optional<Refusal>& refusal() const { return m_refusal; }
    [[nodiscard]] bool isSound() const { return !m_refusal; }

  private:
    std::optional<Refusal> m_refusal;
};

/// Words a field may say and what they mean.
template <typename Meaning, std::size_t count>
using Words = std::array<std::pair<std::string_view, Meaning>, count>;

/// Reads the fields of one JSON object. Whatever is wrong goes to the reading with its pointer, value
/// and what is allowed; the answer is then a default that nobody uses.
class ObjectReader {
  public:
    /// `what` names the object in a sentence: "a line".
    ObjectReader(const Json& value, std::string pointer, std::string_view what, Reading& reading);

    [[nodiscard]] const std::string& pointer() const { return m_pointer; }
    [[nodiscard]] std::string pointerOf(std::string_view key) const { return pointerTo(m_pointer, key); }
    [[nodiscard]] Reading& reading() const { return m_reading; }
    [[nodiscard]] bool has(std::string_view key) const;

    /// The value of `key`, now known; nullptr where it is missing.
    const Json* find(std::string_view key);
    /// The same; missing is refused with `allowed`.
    const Json* require(std::string_view key, std::string_view allowed);

    double number(std::string_view key, const Range& range);
    void number(std::string_view key, const Range& range, double& target);
    void number(std::string_view key, const Range& range, std::optional<double>& target);
    std::string text(std::string_view key, std::string_view allowed);
    void text(std::string_view key, std::string& target);
    void flag(std::string_view key, bool& target);
    void flag(std::string_view key, std::optional<bool>& target);

    /// A list's entries with their pointers; missing is an empty list.
    std::vector<std::pair<const Json*, std::string>> list(std::string_view key, std::string_view what,
                                                          std::size_t most);
    std::vector<double> numbers(std::string_view key, std::string_view what, const Range& range);

    template <typename Meaning, std::size_t count>
    Meaning word(std::string_view key, const Words<Meaning, count>& words) {
        Meaning meaning = words.front().second;
        if (const Json* value = require(key, allowedOf(words))) {
            meaning = wordOf(*value, pointerOf(key), words, m_reading);
        }
        return meaning;
    }
    template <typename Meaning, std::size_t count>
    void word(std::string_view key, const Words<Meaning, count>& words, Meaning& target) {
        if (const Json* value = find(key)) {
            target = wordOf(*value, pointerOf(key), words, m_reading);
        }
    }
    template <typename Meaning, std::size_t count>
    void word(std::string_view key, const Words<Meaning, count>& words, std::optional<Meaning>& target) {
        if (const Json* value = find(key)) {
            target = wordOf(*value, pointerOf(key), words, m_reading);
        }
    }

    template <typename Meaning, std::size_t count>
    static std::string allowedOf(const Words<Meaning, count>& words) {
        std::string allowed;
        for (std::size_t i = 0; i < count; ++i) {
            allowed += i == 0 ? "" : i + 1 == count ? " or " : ", ";
            allowed += "\"" + std::string(words[i].first) + "\"";
        }
        return allowed;
    }
    template <typename Meaning, std::size_t count>
    static Meaning wordOf(const Json& value, const std::string& pointer, const Words<Meaning, count>& words,
                          Reading& reading) {
        for (const auto& [name, meaning] : words) {
            if (value.is_string() && value.get_ref<const std::string&>() == name) {
                return meaning;
            }
        }
        reading.refuse(pointer, "is " + shown(value) + "; allowed is " + allowedOf(words) + ".");
        return words.front().second;
    }

    /// The fields nobody asked for, as a JSON object; an empty one for none.
    [[nodiscard]] Json unknownFields() const;
    /// The same as text, "" for none.
    [[nodiscard]] std::string unknown() const;

  private:
    const Json& m_value;
    std::string m_pointer;
    Reading& m_reading;
    std::set<std::string, std::less<>> m_known;
};

[[nodiscard]] double readNumber(const Json& value, const std::string& pointer, const Range& range,
                                Reading& reading);
[[nodiscard]] Point readPoint(const Json& value, const std::string& pointer, Reading& reading);
/// At least 3 points.
[[nodiscard]] std::vector<Point> readOutline(const Json& value, const std::string& pointer, Reading& reading);
/// Two texts in a list, "[id, id]"; they differ.
[[nodiscard]] std::pair<std::string, std::string> readPair(const Json& value, const std::string& pointer,
                                                           Reading& reading);
/// A JSON object's text, "" for an empty object.
[[nodiscard]] std::string unknownText(const Json& fields);

}  // namespace kerfwall
