// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kept_work.h"

#include <csignal>
#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStandardPaths>
#include <cerrno>

#include "core/says/project_text.h"
#include "ui/session.h"
#include "ui/whole_file.h"

namespace kerfwall {
namespace {

constexpr int kRest = 3000;  // ms after the last change

const QString kPath = QStringLiteral("path");
const QString kProgram = QStringLiteral("program");
const QString kProject = QStringLiteral("project");

/// A name no other window and no other program has.
QString ownFile(const QString& folder) {
    static int windows = 0;
    return QDir(folder).filePath(QStringLiteral("%1-%2.json").arg(::getpid()).arg(++windows));
}

bool isRunning(pid_t program) { return program > 0 && (::kill(program, 0) == 0 || errno == EPERM); }

}  // namespace

KeptWork::KeptWork(Session& session, const QString& folder, QObject* parent) : QObject(parent), m_session(session), m_file(ownFile(folder)) {
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRest);
    connect(&m_rest, &QTimer::timeout, this, &KeptWork::keep);
    connect(&m_session, &Session::changed, this, &KeptWork::follow);
}

KeptWork::~KeptWork() { QFile::remove(m_file); }

void KeptWork::follow() {
    if (m_session.isInHand()) return;
    if (!m_session.isSaved()) return m_rest.start();
    m_rest.stop();
    QFile::remove(m_file);
}

/// Where it cannot be written nothing is said: the maker asked for nothing, and saving will tell.
void KeptWork::keep() {
    if (m_session.isSaved()) return;
    QDir().mkpath(QFileInfo(m_file).path());
    const QJsonObject kept{{kPath, m_session.path()},
                           {kProgram, static_cast<qint64>(::getpid())},
                           {kProject, QString::fromStdString(writeProject(m_session.project()))}};
    static_cast<void>(writeWhole(m_file, QJsonDocument(kept).toJson()));
}

QString keptWorkFolder() { return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(QStringLiteral("unsaved")); }

std::vector<LostWork> lostWorkIn(const QString& folder) {
    std::vector<LostWork> lost;
    for (const QFileInfo& info : QDir(folder).entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Time)) {
        QFile file(info.filePath());
        if (!file.open(QIODevice::ReadOnly)) continue;
        const QJsonObject kept = QJsonDocument::fromJson(file.readAll()).object();
        if (isRunning(static_cast<pid_t>(kept[kProgram].toInteger()))) continue;
        const auto project = readProject(kept[kProject].toString().toStdString());
        if (project) lost.push_back({info.filePath(), kept[kPath].toString(), info.lastModified(), *project});
    }
    return lost;
}

}  // namespace kerfwall
