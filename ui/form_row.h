// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <functional>
#include <optional>
#include <vector>

#include "core/says/project.h"
#include "core/says/range.h"

namespace kerfwall {

/// What every row of a form says.
struct FormRow {
    QString label;
    QString objectName;
    QString step;  ///< what undo calls it
};

struct LengthRow : FormRow {
    double low = 0;
    double high = 0;
    QString range;  ///< the sentence for a value outside
    bool mayBeEmpty = false;
    QString emptyMeans;          ///< shown in the empty field
    bool isAngle = false;        ///< degrees
    bool inMillimetres = false;  ///< whatever the units: tolerances are finer than an inch's fractions
    std::function<std::optional<double>(const Project&)> read;
    std::function<void(Project&, std::optional<double>)> write;
    /// Why that project would not do, in one sentence; "" where it does.
    std::function<QString(const Project&)> refusal;

    /// Its bounds and the sentence for them.
    void setRange(const Range& allowed);
};

struct ChoiceRow : FormRow {
    std::function<QStringList(const Project&)> options;
    std::function<int(const Project&)> read;
    std::function<void(Project&, int)> write;
};

struct TextRow : FormRow {
    bool hasLines = false;  ///< a text of several lines, under its label
    QStringList offered;    ///< usual ones; any other may be typed
    std::function<QString(const Project&)> read;
    /// Writes it, or says in one sentence why not.
    std::function<QString(Project&, const QString&)> write;
};

/// Sizes set apart by semicolons.
struct ListRow : FormRow {
    Range range;  ///< of each
    std::function<std::vector<double>(const Project&)> read;
    std::function<void(Project&, const std::vector<double>&)> write;
};

/// True where a row is shown; none: always.
using RowShown = std::function<bool(const Project&)>;

}  // namespace kerfwall
