// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "core/geometry/solved.h"
#include "core/shop/finding.h"

namespace kerfwall {

/// The project's title, or "Template" where it has none.
[[nodiscard]] QString titleOf(const Project& project);

/// Panel, kerfs and trimming bit, use: a sentence or two each.
[[nodiscard]] QStringList projectFacts(const Project& project, const Solved& solved);

/// What guides the cutter: "Guide bush 24.0 mm, bit 12.7 mm".
[[nodiscard]] QString guideFact(const Project& project, const Solved& solved);

/// The panel: "Panel 400.0 × 250.0 × 12.0 mm mdf".
[[nodiscard]] QString panelFact(const Project& project);

/// One line for each cutout: its opening in the work, with the corners' radius.
[[nodiscard]] QStringList workFacts(const Project& project, const Solved& solved);

/// "Stop: ", "Care: ", "Note: ".
[[nodiscard]] QString severityWords(Severity severity);

}  // namespace kerfwall
