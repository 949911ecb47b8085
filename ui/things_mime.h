// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <expected>

#include "core/says/project.h"

class QMimeData;

namespace kerfwall {

/// Things for the clipboard: as a project's JSON under a type of our own, and as text. The caller owns it.
[[nodiscard]] QMimeData* thingsMime(const Project& snippet);

/// Things from the clipboard, of this program or a project file's text.
/// Refuses   anything else, in one sentence.
[[nodiscard]] std::expected<Project, QString> thingsFrom(const QMimeData* mime);

}  // namespace kerfwall
