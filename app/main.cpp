// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QHashSeed>

#include "app/commands.h"
#include "ui/main_window.h"

namespace {

// Without a display Qt would end the program with an abort; say so instead. A platform that was asked
// for by name may do without one.
bool hasDisplay() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

// Standard error carries the program's own lines; what Qt has to say about this machine is not for the
// one who called a command.
void dropMessage(QtMsgType type, const QMessageLogContext&, const QString& text) {
    if (type == QtFatalMsg) {
        kerfwall::complain(text);
    }
}

int openWindow(const kerfwall::Request& request, int argc, char** argv) {
    if (!hasDisplay()) {
        kerfwall::complain(QStringLiteral(
            "the window needs a display; without one use check, report or publish (see --help)."));
        return static_cast<int>(kerfwall::Exit::Refused);
    }
    const QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("kerfwall"));
    QApplication::setApplicationVersion(QStringLiteral(KERFWALL_VERSION));
    return kerfwall::runWindow(request.files.value(0));
}

}  // namespace

int main(int argc, char** argv) {
    // PDF fonts are named in the order of a hash; a seed of its own in each run would change the bytes.
    QHashSeed::setDeterministicGlobalSeed();
    QStringList arguments;
    for (int i = 1; i < argc; ++i) {
        arguments << QString::fromLocal8Bit(argv[i]);
    }
    const auto request = kerfwall::readArguments(arguments);
    if (!request) {
        kerfwall::complain(request.error() + QStringLiteral(" See kerfwall --help."));
        return static_cast<int>(kerfwall::Exit::Refused);
    }
    if (request->job == kerfwall::Job::Window) {
        return openWindow(*request, argc, argv);
    }
    if (request->job == kerfwall::Job::Publish) {
        // Papers are painted without a display; fonts and pictures need the application object.
        qInstallMessageHandler(dropMessage);
        qputenv("QT_QPA_PLATFORM", "offscreen");
        const QGuiApplication application(argc, argv);
        return static_cast<int>(kerfwall::runCommand(*request));
    }
    return static_cast<int>(kerfwall::runCommand(*request));
}
