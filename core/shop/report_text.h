// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/geometry/solved.h"
#include "core/shop/finding.h"
#include "core/shop/order_of_work.h"

namespace kerfwall {

/// The whole report as JSON text (UTF-8, indented, a line break at the end). Numbers come back bit for
/// bit. Same input, same bytes.
/// Source    the report, version 1.
[[nodiscard]] std::string reportText(const Project& project, const Solved& solved,
                                     const std::vector<Finding>& findings, const OrderOfWork& order);

}  // namespace kerfwall
