// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <expected>

namespace kerfwall {

enum class Job { Window, Check, Report, Publish, Help, Version };

/// What the command line asks for.
struct Request {
    Job job = Job::Window;
    QStringList files;  ///< window: at most one; report and publish: one; check: one or more
    QString to;         ///< publish: the directory
    QString paper;      ///< publish: "" for the project's own
    bool operator==(const Request&) const = default;
};

/// Reads the arguments, the program's name left out.
/// Refuses   unknown options and commands that have too little or too much, in one sentence.
[[nodiscard]] std::expected<Request, QString> readArguments(const QStringList& arguments);

/// How the program is called.
[[nodiscard]] QString helpText();

}  // namespace kerfwall
