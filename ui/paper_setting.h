// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "core/says/project.h"
#include "core/shop/order_of_work.h"

namespace kerfwall {

/// What a step is, in a few words: "Rip fence: kerfs A, B".
[[nodiscard]] QString stepTitle(const Project& project, const WorkStep& step);

/// A step's settings, short enough to be read across a bench: "Fence 96.8 mm", "Blade 6.0 mm up" ...
[[nodiscard]] QStringList settingWords(const Project& project, const WorkStep& step);

/// How the panel lies at the machine: "layout face down", "bottom edge on the fence" ...
[[nodiscard]] QStringList lieWords(const WorkStep& step);

/// A length with its unit, in the project's units. The decimal sign is a dot, whatever the locale.
[[nodiscard]] QString lengthWords(const Project& project, double mm);

}  // namespace kerfwall
