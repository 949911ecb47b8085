// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArrayView>
#include <QString>
#include <expected>

class QSaveFile;

namespace kerfwall {

/// Writes a file beside its place and down to the disk; it takes its place where it is committed. False: see its error.
[[nodiscard]] bool writeBeside(QSaveFile& file, QByteArrayView bytes);

/// Writes that file whole or not at all; what stood there before is untouched where it cannot be.
/// Refuses   with the system's words for why.
[[nodiscard]] std::expected<void, QString> writeWhole(const QString& path, QByteArrayView bytes);

}  // namespace kerfwall
