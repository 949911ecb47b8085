// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/says/json_text.h"
#include "core/says/words.h"

namespace kerfwall {

/// Gathers the fields of one JSON object in the order they are given; what an absent field says anyway
/// is left out, bit for bit.
class ObjectWriter {
  public:
    void put(const std::string& key, Json value);
    void number(const std::string& key, double value);
    void number(const std::string& key, double value, double absent);
    void number(const std::string& key, const std::optional<double>& value);

    template <typename Value>
    void value(const std::string& key, const Value& value, const Value& absent) {
        if (value != absent) {
            put(key, value);
        }
    }
    template <typename Meaning, std::size_t count>
    void word(const std::string& key, const Words<Meaning, count>& words, const Meaning& meaning) {
        put(key, wordFor(words, meaning));
    }
    template <typename Meaning, std::size_t count>
    void word(const std::string& key, const Words<Meaning, count>& words, const Meaning& meaning,
              const Meaning& absent) {
        if (meaning != absent) {
            word(key, words, meaning);
        }
    }
    template <typename Meaning, std::size_t count>
    void word(const std::string& key, const Words<Meaning, count>& words,
              const std::optional<Meaning>& meaning) {
        if (meaning) {
            word(key, words, *meaning);
        }
    }
    /// A list, left out where it is empty.
    template <typename Item, typename ToJson>
    void list(const std::string& key, const std::vector<Item>& items, ToJson toJson) {
        if (!items.empty()) {
            Json values = Json::array();
            for (const Item& item : items) {
                values.push_back(toJson(item));
            }
            put(key, std::move(values));
        }
    }
    /// An object, left out where it has no field.
    void filled(const std::string& key, Json object);

    /// The object with its unknown fields put back, those inside it too.
    [[nodiscard]] Json object(const std::string& unknown) const;

  private:
    Json m_object = Json::object();
};

[[nodiscard]] Json pointJson(const Point& point);
[[nodiscard]] Json pointsJson(const std::vector<Point>& points);
[[nodiscard]] std::string baseName(const Base& base);

[[nodiscard]] Json lineJson(const LayoutLine& line);
[[nodiscard]] Json cutoutJson(const Cutout& cutout);
[[nodiscard]] Json benchJson(const Bench& bench);
[[nodiscard]] Json useJson(const Use& use);

}  // namespace kerfwall
