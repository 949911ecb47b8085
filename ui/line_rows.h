// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <expected>
#include <functional>
#include <optional>
#include <variant>
#include <vector>

#include "core/geometry/solved.h"
#include "ui/entry_state.h"

namespace kerfwall {

/// A line and what it stands in.
struct LineView {
    const Project& project;
    const Solved& solved;
    const LayoutLine& line;
};

/// What is chosen, typed as a number (mm or degrees), or written.
using RowValue = std::variant<int, double, QString>;

/// One row of the line's form: how it is read, and what the project becomes when it is filled in.
struct LineRow {
    enum class Kind { Words, Choice, Number };
    Kind kind = Kind::Choice;
    QString name;  ///< the widget's
    std::function<QString(const LineView&)> label;
    std::function<bool(const LineView&)> isShown;
    std::function<QString(const LineView&)> words;                          ///< Words
    std::function<QStringList(const LineView&)> options;                    ///< Choice
    std::function<int(const LineView&)> chosen;                             ///< Choice
    std::function<std::optional<EntryField>(const LineView&)> number;       ///< Number
    std::function<std::expected<Project, QString>(const LineView&, const RowValue&)> set;  ///< else one sentence why not
};

/// Name, way of laying, what it is laid from, its numbers, what it is for, extent and saw.
[[nodiscard]] std::vector<LineRow> lineRows();

}  // namespace kerfwall
