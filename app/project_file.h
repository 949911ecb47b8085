// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <expected>

#include "core/geometry/solved.h"

namespace kerfwall {

/// A project from a file, with what geometry answers about it.
struct OpenedProject {
    Project project;
    Solved solved;
};

/// Opens a project file for a command.
/// Refuses   with one line, "FILE: POINTER: sentence": a file that cannot be read or is no project, and
///           trouble of drawing, which the command line does not work around.
[[nodiscard]] std::expected<OpenedProject, QString> openProject(const QString& file);

/// `text` on one line: whatever would break the line becomes a space.
[[nodiscard]] QString onOneLine(QString text);

}  // namespace kerfwall
