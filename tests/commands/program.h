// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>
#include <functional>
#include <string_view>

namespace kerfwall {

/// What one run of the program gave.
struct Answer {
    int status = -1;  ///< the exit status; -1 where it crashed or did not end
    QByteArray out;
    QByteArray err;
};

/// A directory of its own for one test, and the built program run in it without a display.
class Workbench {
  public:
    /// Standard output goes to `outFile` where one is named.
    [[nodiscard]] Answer run(const QStringList& arguments, const QString& outFile = {}) const;
    /// The same where no file can grow past `bytes`, as on a disk that fills up.
    [[nodiscard]] Answer runOnFullDisk(const QStringList& arguments, quint64 bytes) const;
    /// The same where permissions hold, even for the system's administrator.
    [[nodiscard]] Answer runWithoutRights(const QStringList& arguments) const;

    void write(const QString& name, std::string_view bytes) const;
    [[nodiscard]] QByteArray read(const QString& name) const;
    [[nodiscard]] bool has(const QString& name) const;
    [[nodiscard]] QString path(const QString& name) const { return m_dir.filePath(name); }

  private:
    [[nodiscard]] Answer runAs(const QStringList& arguments, const QString& outFile, const std::function<void()>& before) const;

    QTemporaryDir m_dir;
};

/// True where `bytes` is one line with its line break and nothing else.
[[nodiscard]] bool isOneLine(const QByteArray& bytes);

/// A sound project: a rectangular window 200 x 120 in a panel of 600 x 400 x 18.
[[nodiscard]] std::string soundProject();
/// The same with the JSON at `where` replaced.
[[nodiscard]] std::string soundProjectWith(const std::string& where, const std::string& value);

}  // namespace kerfwall
