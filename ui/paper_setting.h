// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "core/says/project.h"
#include "core/shop/order_of_work.h"

namespace kerfwall {

/// What a step is, in a few words: "Rip fence: kerfs A, B".
[[nodiscard]] QString stepTitle(const Project& project, const WorkStep& step);

/// One thing that is set, to be shown large: "Fence" "96.8" "mm". Words stand as a value without a unit.
struct SettingFigure {
    QString caption;
    QString value;
    QString unit;
    bool operator==(const SettingFigure&) const = default;
};

/// A step's settings in the order they are set; for holes their size, depth and height. The decimal sign is a dot.
[[nodiscard]] std::vector<SettingFigure> settingFigures(const Project& project, const Solved& solved,
                                                        const WorkStep& step);

/// How the panel lies: "layout face down", "bottom edge on the fence" ... Nothing where it does not matter.
[[nodiscard]] QStringList lieWords(const WorkStep& step);

/// A length with its unit, in the project's units. The decimal sign is a dot, whatever the locale.
[[nodiscard]] QString lengthWords(const Project& project, double mm);

}  // namespace kerfwall
