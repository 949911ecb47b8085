// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

namespace kerfwall {

/// A value the entry line offers to type, or a choice.
struct EntryField {
    enum class Kind { Length, Angle, Choice };
    Kind kind = Kind::Length;
    QString label;
    std::optional<double> value;  ///< mm or degrees; none: empty
    QStringList options;          ///< Choice only
    int chosen = 0;               ///< Choice only
    bool operator==(const EntryField&) const = default;
};

/// What the entry line shows: values to type and a sentence that says what the click will do.
struct EntryState {
    std::vector<EntryField> fields;
    QString sentence;
    bool staysAmongFields = false;  ///< Tab goes round among the fields: something is in hand
    bool operator==(const EntryState&) const = default;
};

}  // namespace kerfwall
