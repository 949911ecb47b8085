// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/kept_work.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStandardPaths>

#include "core/says/project_text.h"
#include "ui/session.h"
#include "ui/whole_file.h"

namespace kerfwall {
namespace {

constexpr int kRest = 3000;  // ms after the last change

const QString kPath = QStringLiteral("path");
const QString kProject = QStringLiteral("project");

/// A name no other window and no other program has.
QString ownFile(const QString& folder) {
    static int windows = 0;
    return QDir(folder).filePath(QStringLiteral("%1-%2.json").arg(::getpid()).arg(++windows));
}

QString lockOf(const QString& file) { return file + QStringLiteral(".lock"); }

/// Whether the window that keeps that file is still there: its lock goes with its program, however that ends.
bool isHeld(const QString& file) {
    const int lock = ::open(QFile::encodeName(lockOf(file)).constData(), O_RDONLY | O_CLOEXEC);
    if (lock < 0) return false;
    const bool isHeld = ::flock(lock, LOCK_EX | LOCK_NB) != 0;
    ::close(lock);
    return isHeld;
}

}  // namespace

KeptWork::KeptWork(Session& session, const QString& folder, QObject* parent) : QObject(parent), m_session(session), m_file(ownFile(folder)) {
    QDir().mkpath(folder);
    m_lock = ::open(QFile::encodeName(lockOf(m_file)).constData(), O_RDONLY | O_CREAT | O_CLOEXEC, 0600);
    if (m_lock >= 0) static_cast<void>(::flock(m_lock, LOCK_EX | LOCK_NB));
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRest);
    connect(&m_rest, &QTimer::timeout, this, &KeptWork::keep);
    connect(&m_session, &Session::changed, this, &KeptWork::follow);
}

KeptWork::~KeptWork() {
    QFile::remove(m_file);
    QFile::remove(lockOf(m_file));
    if (m_lock >= 0) ::close(m_lock);
}

void KeptWork::follow() {
    if (m_session.isInHand()) return;
    if (!m_session.isSaved()) return m_rest.start();
    m_rest.stop();
    QFile::remove(m_file);
}

/// Where it cannot be written nothing is said: the maker asked for nothing, and saving will tell.
void KeptWork::keep() {
    if (m_session.isSaved()) return;
    const QJsonObject kept{{kPath, m_session.path()},
                           {kProject, QString::fromStdString(writeProject(m_session.project()))}};
    static_cast<void>(writeWhole(m_file, QJsonDocument(kept).toJson()));
}

QString keptWorkFolder() { return QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).filePath(QStringLiteral("unsaved")); }

void forget(const LostWork& work) {
    QFile::remove(work.file);
    QFile::remove(lockOf(work.file));
}

std::vector<LostWork> lostWorkIn(const QString& folder) {
    std::vector<LostWork> lost;
    for (const QFileInfo& info : QDir(folder).entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Time)) {
        QFile file(info.filePath());
        if (!file.open(QIODevice::ReadOnly)) continue;
        if (isHeld(info.filePath())) continue;
        const QJsonObject kept = QJsonDocument::fromJson(file.readAll()).object();
        const auto project = readProject(kept[kProject].toString().toStdString());
        if (project) lost.push_back({info.filePath(), kept[kPath].toString(), info.lastModified(), *project});
    }
    return lost;
}

}  // namespace kerfwall
