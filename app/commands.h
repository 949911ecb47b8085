// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/arguments.h"

namespace kerfwall {

/// Exit statuses; where several apply, the highest counts.
enum class Exit { Done = 0, Stop = 1, Refused = 2, NotWritten = 3 };

/// Every job but the window's: findings, report, papers, help, version. Standard output carries the
/// answer and nothing else, standard error one line for each refusal.
/// Requires  a QGuiApplication for Publish; none for the rest.
[[nodiscard]] Exit runCommand(const Request& request);

/// One line on standard error, "kerfwall: ...".
void complain(const QString& line);

}  // namespace kerfwall
