// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

#include "core/drawing/print_scale.h"

class QPrinter;

namespace kerfwall {

/// The system's printers, the one it prints on by itself first.
[[nodiscard]] QStringList printersHere();

/// The printer chosen last; "": the PDF, printed elsewhere.
[[nodiscard]] QString chosenPrinter();
void choosePrinter(const QString& printer);

/// What was measured off prints of that printer: corrections along its paper's short side (x) and long side (y). None: nothing
/// was measured yet.
[[nodiscard]] std::optional<PrintScale> keptScale(const QString& printer);
void keepScale(const QString& printer, const PrintScale& scale);

/// The margin below which that printer, or any, leaves the edge blank, mm: what it says itself, at least 6.35 (a quarter inch,
/// of the trade).
[[nodiscard]] double leastMarginOf(const QString& printer, const Paper& paper);

/// Sets a printer up to print on that paper as it lies, edge to edge.
void setUp(QPrinter& printer, const Paper& paper);

}  // namespace kerfwall
