// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/project_file.h"

#include <QFile>

#include "core/geometry/solve.h"
#include "core/says/project_text.h"
#include "core/strength/flex.h"

namespace kerfwall {

namespace {

using Refused = std::unexpected<QString>;

constexpr qint64 kMaxBytes = qint64{16} << 20;  // of a project file

QString tooLong() {
    return QStringLiteral("is longer than %1 bytes; a project file has at most that many.").arg(kMaxBytes);
}

// Reads no more than a project may have, however large the file says it is or a pipe turns out to be.
std::expected<QByteArray, QString> readBytes(const QString& name) {
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) {
        return Refused(QStringLiteral("cannot be opened (%1); name a project file that can be read.")
                           .arg(file.errorString()));
    }
    if (file.size() > kMaxBytes) {
        return Refused(tooLong());
    }
    QByteArray bytes;
    while (bytes.size() <= kMaxBytes) {
        const QByteArray more = file.read(kMaxBytes + 1 - bytes.size());
        if (more.isEmpty()) {
            break;
        }
        bytes += more;
    }
    if (file.error() != QFileDevice::NoError) {
        return Refused(QStringLiteral("cannot be read (%1).").arg(file.errorString()));
    }
    if (bytes.size() > kMaxBytes) {
        return Refused(tooLong());
    }
    return bytes;
}

Refused refusedAt(const QString& file, const std::string& pointer, const std::string& sentence) {
    const QString place =
        pointer.empty() ? QString() : QString::fromStdString(pointer) + QStringLiteral(": ");
    return Refused(onOneLine(file + QStringLiteral(": ") + place + QString::fromStdString(sentence)));
}

}  // namespace

std::expected<OpenedProject, QString> openProject(const QString& file) {
    const auto bytes = readBytes(file);
    if (!bytes) {
        return Refused(onOneLine(file + QStringLiteral(": ") + bytes.error()));
    }
    auto project = readProject({bytes->constData(), static_cast<std::size_t>(bytes->size())});
    if (!project) {
        return refusedAt(file, project.error().pointer, project.error().sentence);
    }
    Solved solved = solve(*project);
    if (!solved.troubles.empty()) {
        return refusedAt(file, solved.troubles.front().pointer, solved.troubles.front().sentence);
    }
    solved = withFlex(*project, std::move(solved));
    return OpenedProject{std::move(*project), std::move(solved)};
}

QString onOneLine(QString text) {
    for (QChar& letter : text) {
        const bool breaksLine = letter.category() == QChar::Other_Control || letter == QChar::LineSeparator ||
                                letter == QChar::ParagraphSeparator;
        if (breaksLine) {
            letter = QLatin1Char(' ');
        }
    }
    return text;
}

}  // namespace kerfwall
