// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <expected>
#include <vector>

#include "core/geometry/solved.h"
#include "core/shop/finding.h"

class QPrinter;

namespace kerfwall {

/// Prints one sheet with as many labels as its paper holds, on `printer` as it was set up; paper too small for its margin
/// and a label gets one label. Says why where it could not.
[[nodiscard]] std::expected<void, QString> printLabels(QPrinter& printer, const Project& project, const Solved& solved,
                                                       const std::vector<Finding>& findings);

}  // namespace kerfwall
