// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/whole_file.h"

#include <unistd.h>

#include <QSaveFile>

namespace kerfwall {

bool writeBeside(QSaveFile& file, QByteArrayView bytes) {
    return file.open(QIODevice::WriteOnly) && file.write(bytes.data(), bytes.size()) == bytes.size() && file.flush() &&
           ::fsync(file.handle()) == 0;
}

std::expected<void, QString> writeWhole(const QString& path, QByteArrayView bytes) {
    QSaveFile file(path);
    if (writeBeside(file, bytes) && file.commit()) return {};
    return std::unexpected(file.errorString());
}

}  // namespace kerfwall
