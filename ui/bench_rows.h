// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/sheet_form.h"

namespace kerfwall {

/// Why a saw's blade would be too small for the kerfs' depth, in one sentence; "" where none is.
[[nodiscard]] QString bladeRefusal(const Project& project);

/// "Rip fence".
[[nodiscard]] QString sawKindText(SawKind kind);
[[nodiscard]] QString sawHeading(const Saw& saw, Units units);
[[nodiscard]] QString clampHeading(const Clamp& clamp, Units units);

/// The trimming bit and what it is trimmed with.
void addTrimmingRows(SheetForm& form);
/// Drills, circle bit, router base, and what else is at hand.
void addDrillRows(SheetForm& form);

/// The fields of one saw by its kind, of one clamp. Requires  it is on the bench of the session's project.
[[nodiscard]] SheetForm* makeSawForm(Session& session, std::size_t saw, QWidget* parent);
[[nodiscard]] SheetForm* makeClampForm(Session& session, std::size_t clamp, QWidget* parent);

}  // namespace kerfwall
