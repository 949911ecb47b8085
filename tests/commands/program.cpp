// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/commands/program.h"

#include <linux/capability.h>
#include <sys/prctl.h>
#include <sys/resource.h>

#include <QFile>
#include <QFileInfo>
#include <QProcess>
#include <csignal>
#include <nlohmann/json.hpp>

namespace kerfwall {

namespace {

constexpr int kPatience = 60000;  // ms

QProcessEnvironment withoutDisplay() {
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) {
        environment.remove(QString::fromLatin1(name));
    }
    return environment;
}

}  // namespace

Answer Workbench::run(const QStringList& arguments, const QString& outFile) const { return runAs(arguments, outFile, {}); }

Answer Workbench::runOnFullDisk(const QStringList& arguments, quint64 bytes) const {
    return runAs(arguments, {}, [bytes] {
        const rlimit limit{bytes, bytes};
        setrlimit(RLIMIT_FSIZE, &limit);
        std::signal(SIGXFSZ, SIG_IGN);  // the write fails instead
    });
}

Answer Workbench::runWithoutRights(const QStringList& arguments) const {
    // Nothing to drop, and no harm, where the test runs as a common user.
    return runAs(arguments, {}, [] { prctl(PR_CAPBSET_DROP, CAP_DAC_OVERRIDE, 0, 0, 0); });
}

Answer Workbench::runAs(const QStringList& arguments, const QString& outFile, const std::function<void()>& before) const {
    QProcess process;
    if (before) process.setChildProcessModifier(before);
    process.setWorkingDirectory(m_dir.path());
    process.setProcessEnvironment(withoutDisplay());
    if (!outFile.isEmpty()) {
        process.setStandardOutputFile(outFile);
    }
    process.start(QStringLiteral(KERFWALL_PROGRAM), arguments);
    if (!process.waitForFinished(kPatience) || process.exitStatus() != QProcess::NormalExit) {
        return {-1, process.readAllStandardOutput(), process.readAllStandardError()};
    }
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

void Workbench::write(const QString& name, std::string_view bytes) const {
    QFile file(path(name));
    file.open(QIODevice::WriteOnly);
    file.write(bytes.data(), static_cast<qint64>(bytes.size()));
}

QByteArray Workbench::read(const QString& name) const {
    QFile file(path(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

bool Workbench::has(const QString& name) const { return QFileInfo::exists(path(name)); }

bool isOneLine(const QByteArray& bytes) {
    return bytes.count('\n') == 1 && bytes.endsWith('\n') && bytes.size() > 1;
}

std::string soundProject() {
    return R"({
  "format": "kerfwall-project",
  "version": 1,
  "title": "Stall shelf",
  "panel": {"width": 600, "height": 400, "thickness": 18},
  "lines": [
    {"id": "A", "place": {"by": "offset", "from": "bottom", "distance": 140}},
    {"id": "B", "place": {"by": "offset", "from": "bottom", "distance": 260}},
    {"id": "C", "place": {"by": "offset", "from": "left", "distance": 200}},
    {"id": "D", "place": {"by": "offset", "from": "left", "distance": 400}}
  ],
  "cutouts": [{"id": "window", "seeds": [[300, 200]]}]
})";
}

std::string soundProjectWith(const std::string& where, const std::string& value) {
    auto project = nlohmann::ordered_json::parse(soundProject());
    project[nlohmann::ordered_json::json_pointer(where)] = nlohmann::ordered_json::parse(value);
    return project.dump();
}

}  // namespace kerfwall
